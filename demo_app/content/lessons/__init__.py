"""Lesson plans: what a teacher writes down, checked, and held to what a school allows."""
