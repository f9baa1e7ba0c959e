# What design help says: pictures, borders outside borders, lettering.

# Why a file is no picture of one repeat; the name of the file stands before it.
picture-noSquares = found no square; expected a line for each round, with a letter for each stitch
picture-rounds = found { $rounds } rounds; expected { $most } at most for a chart
picture-wide = found { $stitches } stitches in a round; expected { $most } at most for a repeat
picture-uneven = line { $line }: found { $found ->
    [one] 1 letter
   *[other] { $found } letters
    }; expected { $expected }, as in the first round of the file
picture-yarn = line { $line }, column { $column }: found '{ $letter }', which is no yarn here; expected { $yarns }
picture-letter = '{ $letter }'
picture-crop = found a part that does not lie in the picture; expected one within { $width } by { $height } pixels
picture-pixels = found { $pixels } pixels; expected { $most } at most

picture-miss = Round { $round }, stitch { $place } of the repeat: wanted { $wanted }, shows { $shows }.

# One border worked round another.
stack-title = { $inner } with { $outer } round it
stack-closes = Both come out even: { $between ->
    [0] no plain round
    [one] 1 plain round
   *[other] { $between } plain rounds
    } between them{ $between ->
    [0] {""}
   *[other] , of back-loop stitches in { $yarn }
    }.
stack-renamed = Of the outer border, yarn { $old } is now { $new }.
stack-never = No number of plain rounds lets both come out even: { $even ->
    [EVEN] the inner border needs an even number of stitches on a side and the outer an odd one
   *[ODD] the inner border needs an odd number of stitches on a side and the outer an even one
    }, both repeats are multiples of { $divisor }, and each round adds 2. Where the repeat begins does not matter.
stack-change = It is possible if { $whose ->
    [INNER] the inner border
   *[OUTER] the outer border
    } has { $then } instead of { $now } stitches { $where ->
    [FROM_CORNER] from the corner
   *[TO_CORNER] to the corner
    } in its base round; then with { $between ->
    [0] no plain round
    [one] 1 plain round
   *[other] { $between } plain rounds
    } between them.
stack-tooLarge-ROUNDS = both borders together would have { $found } rounds; expected { $most } at most for a chart
stack-tooLarge-REPEAT = one repeat of both borders would have { $found } stitches; expected { $most } at most for a chart
stack-tooLarge-CORNER = a corner section of both borders would have { $found } stitches in round 1; expected { $most } at most for a chart
stack-tooLarge-YARNS = both borders together would have { $found } yarns; expected { $most } at most for a chart

# Why there is no band with a text.
letter-missing = the alphabet has no { $characters }; expected letters, digits and signs that it has
letter-character = '{ $character }'
letter-nothing = found a text in which nothing is to be seen; expected a letter at least
letter-long = found a text of { $stitches } stitches; expected { $most } at most for a repeat
letter-yarns = found a chart with one yarn; expected two, for the ground and the letters
