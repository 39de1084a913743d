"""Photos: files that come in, whose tray they show, and what is kept of them; the station."""
