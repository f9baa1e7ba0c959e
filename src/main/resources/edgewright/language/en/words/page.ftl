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
# Of a technique, in both terms
both-title = { $one } / { $other }
# $first, $second: the names of the terms; $one, $other: what to do, as each of them says it
both-step = { $first }: { $one } { $second }: { $other }
# Over what holds in both terms and comes after each of them
both-terms = { $one } and { $other }
