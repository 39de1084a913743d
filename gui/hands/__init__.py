"""Hands: what holds in every window for fingers, wheels, keys and screen readers, whatever it shows."""
