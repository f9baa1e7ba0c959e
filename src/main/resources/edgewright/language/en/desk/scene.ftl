# The whole border around its piece.

scene-title = Border around its piece
scene-heard = Border of { $title } around a piece, with { $across ->
    [one] 1 repeat
   *[other] { $across } repeats
    } at top and bottom and { $down } at left and right
scene-across = Repeats, &top and bottom
scene-down = &Left and right
scene-smaller = &Smaller
scene-larger = Lar&ger
scene-whole = &Whole border
scene-making = The border is being drawn…
scene-tooLarge = With so many repeats the border has { $stitches ->
    [one] 1 stitch
   *[other] { $stitches } stitches
    }: too many to be drawn, and too small to be seen. Choose fewer repeats above.

# Keys
scene-keys-left = LEFT, KP_LEFT
scene-keys-right = RIGHT, KP_RIGHT
scene-keys-up = UP, KP_UP
scene-keys-down = DOWN, KP_DOWN
scene-keys-in = PLUS, EQUALS, ADD
scene-keys-out = MINUS, SUBTRACT
scene-keys-fit = 0, NUMPAD0
