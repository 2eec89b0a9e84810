"""Materials and grades, and which belongs to which size."""
