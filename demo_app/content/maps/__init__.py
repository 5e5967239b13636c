"""What-if maps: a reading over two settings, on all cores or on any executor, and resumable."""
