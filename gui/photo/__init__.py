"""Photo: a photo from its file to the screen, at any zoom and with layers."""
