"""An official FoodData Central download into an index that can be searched."""
