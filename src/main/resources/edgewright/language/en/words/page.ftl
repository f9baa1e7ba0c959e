# What a page adds to the words of a pattern.
untitled = Written pattern
contents = Contents
chart = Chart
picture = One corner and the beginnings of its two sides. The rounds below say the same in words.
