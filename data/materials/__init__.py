"""Materials: the table of media side by side on all that a photograph cannot see."""
