"""Signs of a misread, whatever misled the reading: each raises a doubt and reads nothing anew."""
