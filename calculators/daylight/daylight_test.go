package daylight

import "coursebook/calculators/quantity"

var us = quantity.Style{}
