"""What is this venue's own: its jets, burners and samples, with the values fitted to them."""
