# One text of each kind.
plain = tilde~stands for a blank
two-lines =
    first line
    second line

filled = { $yarn } ötar { $round }
stitches = { $stitches ->
    [0] nül mäsk
    [one] { $stitches } mäsk
    [few] { $stitches } mäski
   *[other] { $stitches } mäskor
}
way = { $way ->
    [UP] ylös
   *[DOWN] alas
}
spaced = {"  "}a{"{"}b{"}"}

-maker = vävare
by-maker = { -maker }: { plain }
round-about = { round-about }
called = { NUMBER($stitches) }
