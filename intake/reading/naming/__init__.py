"""What each figure is: OD, wall, bore or radius, told by words, by order and by its neighbours."""
