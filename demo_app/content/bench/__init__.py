"""The prep bench: questions to plan a show with, each answered with its spread."""
