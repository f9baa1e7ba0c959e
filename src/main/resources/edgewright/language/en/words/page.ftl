# What a page adds to the words of a pattern.
untitled = Written pattern
contents = Contents
chart = Chart
fabric = The border as it looks when it is worked, here around a small piece: { $across ->
    [one] one repeat
   *[other] { $across } repeats
    } at top and bottom, { $down ->
    [one] one
   *[other] { $down }
    } at each side.
picture = One corner and the beginnings of its two sides. The rounds below say the same in words.
