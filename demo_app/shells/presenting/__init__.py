"""The presenter's window, its parts and what it keeps."""
