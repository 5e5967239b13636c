"""The prep bench: questions to plan a show with, each answered by the same model, with its spread."""
