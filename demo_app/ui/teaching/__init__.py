"""What a lesson needs on the screen besides a show: bounds, tries, votes before and after."""
