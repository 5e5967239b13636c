"""A moulded plastic tray: filling through a gate, molecular stretch, freezing."""
