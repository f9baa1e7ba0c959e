# The techniques that a pattern uses, step by step, each beside a figure. What they say must be what the notes, the joining and
# the finishing say in words/write.ftl, loop for loop.
# $hand: that holds the hook; $join: how the yarn is joined; $ends: where a round begins and ends; $into: the stitch that is
# worked, by its name in the chart; $chains: of a corner; $stitch, $together, $base, $chain, $tall, $slip: what the terms call them

title-ALONG_STITCHES = Base round along stitches
title-ROW_ENDS = Base round along the ends of rows
title-START_AT_CORNER = Beginning a round at a corner
title-START_ABOVE_MARKER = Beginning a round above its marker
title-BACK_LOOP = Back-loop stitch ({ $stitch })
title-LONG = Long stitch ({ $stitch })
title-CORNER = Corner of { $chains }~{ $chain }
title-TWO_IN_ONE = Two stitches out of one
title-TWO_TOGETHER = Two stitches worked together ({ $together })
title-INVISIBLE_JOIN = Closing a round with an invisible join
title-SLIP_JOIN = Closing a round with a slip stitch
title-LAYERS = Joining the layers

# A line for each number in the figure, in order.
steps-ALONG_STITCHES =
    Put the hook under both loops of the next stitch of the piece.
    Work one { $base } there, and one in each stitch after it.
steps-ROW_ENDS =
    Work one in the end of each row of { $base }.
    Work two in the end of each row that is twice as high.
    Work three in the end of each row that is three times as high.
steps-START_AT_CORNER = { $join ->
    [STANDING] Begin with a slip knot on the hook.
   *[CHAIN] Join the yarn with one chain in { $chains ->
        [1] the corner chain of the round below
       *[other] the last chain of the corner in the round below, the one next to the side that you begin
        }, in its back loop. This chain is not a stitch.
    [SLIP] Join the yarn with a slip stitch in { $chains ->
        [1] the corner chain of the round below
       *[other] the last chain of the corner in the round below, the one next to the side that you begin
        }, in its back loop, and make one chain. Neither is a stitch.
    }
    { $join ->
    [STANDING] Work the first stitch, as a standing stitch, into { $chains ->
        [1] the corner chain of the round below
       *[other] the last chain of the corner in the round below, the one next to the side that you begin
        }. It counts as any other.
   *[CHAIN] Work the first stitch into the same corner chain.
    }
steps-START_ABOVE_MARKER =
    Go up from the marker to the stitch of the round below that stands straight above the marked one.{ $join ->
    [STANDING] { " " }Leave it free.
   *[CHAIN] { "" }
    }
    { $join ->
    [STANDING] Begin with a slip knot on the hook, and work the first stitch at the next stitch along, as a standing stitch. It counts as any other.
   *[CHAIN] Join the yarn there with one chain, in the back loop. This chain is not a stitch.
    [SLIP] Join the yarn there with a slip stitch in the back loop, and make one chain. Neither is a stitch.
    }
    { $join ->
    [STANDING] When you have come round, work the last stitch of the round into the stitch that is still free.
   *[CHAIN] Work the first stitch at the next stitch along, the one after the chain.
        When you have come round, work the last stitch of the round into the stitch where you joined the yarn.
    }
steps-BACK_LOOP =
    Put the hook under the back loop alone of the stitch below: the upper of its two loops, the one farther from you.
    Work a { $base } there. The front loop stays free and lies in front of the new stitch.
steps-LONG =
    Wind the yarn once round the hook. Put the hook from below under the free front loop of the stitch two rounds below.
    Draw up a loop to the height of the round and finish as a { $tall }. The stitch lies in front of the round between.
    Leave the stitch between unworked: the long stitch covers it.
steps-CORNER =
    Work the last stitch of the side into { $chains ->
    [1] the corner chain of the round below
   *[other] the first chain of the corner in the round below
    }. { $into ->
    [PLAIN] A { $stitch } takes both loops of the chain.
   *[BACK_LOOP] A { $stitch } takes the back loop of the chain.
    }
    Make { $chains }~{ $chain }.
    Work the first stitch of the next side into { $chains ->
    [1] the same corner chain
   *[other] the last chain of the same corner
    [3] the last chain of the same corner. The middle chain stays empty
    }.
steps-TWO_IN_ONE =
    Work a stitch into the next stitch.
    Work another one into the same stitch.
steps-TWO_TOGETHER =
    Draw up a loop through { $into ->
    [PLAIN] both loops
   *[BACK_LOOP] the back loop
    } of the next stitch.
    Draw up another loop in the same way through the stitch after it.
    Take the yarn on the hook and draw it through all loops on the hook.
steps-INVISIBLE_JOIN =
    Cut the yarn, pull the end out of the last { $ends ->
    [CORNER] chain
   *[SIDE] stitch
    } and thread the needle with it.
    { $join ->
    [STANDING] Go under both top loops of the second stitch of the round.
    [SLIP] Pass over the slip stitch and the chain, and go under both top loops of the first counted stitch.
   *[CHAIN] Pass over the joining chain, and go under both top loops of the first counted stitch.
    }
    Go back into the top of the last { $ends ->
    [CORNER] chain
   *[SIDE] stitch
    }. Pull until the new loop has the size of a stitch. { $join ->
    [STANDING] It lies over the first stitch and takes the place of its top; it is not counted again.
   *[CHAIN] It is not counted, and no stitch goes into it.
    }
steps-SLIP_JOIN =
    Put the hook under both top loops of the first counted stitch.
    Draw the yarn through it and through the loop on the hook. This slip stitch is not counted. Cut the yarn and fasten off.
steps-LAYERS =
    Lay the layers wrong sides together with the front facing you. Put the hook under the back loops of both, the two on the inside.
    Work a { $slip } there, and one in every stitch and every corner chain after it.

# What a figure shows. $hand: a figure for the left hand is the mirror image.
figure-ALONG_STITCHES = The edge of a piece with its row of stitches, two loops on top of each. The hook goes under both loops of the next one. On the { $hand ->
    [LEFT] left
   *[RIGHT] right
    } three new stitches stand, one in each stitch of the piece.
figure-ROW_ENDS = The edge of a piece whose rows end at it, each with a bracket and under it how many stitches go there: two low rows, one twice as high and one three times as high. One new stitch stands in each low row and two in the next. In the highest stand two, and the hook goes under the strand at its end for the third.
figure-START_AT_CORNER = A corner of the round below and the side after it. In the last chain of that corner { $join ->
    [STANDING] the first stitch of the new round stands, with the end of the yarn at its top, and beside it a hook is seen with a slip knot on it
    [SLIP] lie a slip stitch and a chain, and beside them stands the first stitch of the new round
   *[CHAIN] a chain begins, and beside it stands the first stitch of the new round
    }. The work goes to the { $hand ->
    [LEFT] right
   *[RIGHT] left
    }.
figure-START_ABOVE_MARKER = A marker in a stitch, and an arrow from it straight up to the stitch of the round below. { $join ->
    [STANDING] That stitch is free.
    [SLIP] In its back loop lie a slip stitch and a chain.
   *[CHAIN] In its back loop a chain begins.
    } The first stitch of the new round stands in the next stitch to the { $hand ->
    [LEFT] right
   *[RIGHT] left
    }. The cut end of the yarn lies beside it, and the yarn leads to its ball. A stitch in dashes, to which an arrow leads, shows that the last stitch of the round goes into the stitch above the marker.
figure-BACK_LOOP = A row of stitches, two loops on top of each like a V lying on its side. The hook passes in front of the front loop and goes under the back loop of the next stitch. On the { $hand ->
    [LEFT] left
   *[RIGHT] right
    } three stitches are done: they stand in the back loops, and the front loops lie free before them.
figure-LONG = Two rounds in two yarns. The hook goes up under the free front loop of the lower round, in front of the stitch of the upper round, which a line with a dot marks. On the { $hand ->
    [LEFT] left
   *[RIGHT] right
    } a long stitch is done: it hangs on the front loop of the lower round, lies in front of the upper round and ends at the top of the new one.
figure-CORNER = A corner that lies flat, the round below inside and the new round outside. { $chains ->
    [1] Two stitches of the new round stand in the one chain of the corner below, the last of a side and the first of the next, with the new chain between them.
    [3] One stitch of the new round stands in the first and one in the last of the three chains of the corner below; three new chains lie between them.
   *[other] One stitch of the new round stands in the first and one in the last of the two chains of the corner below; two new chains lie between them.
    }
figure-TWO_IN_ONE = A round on the round below. In the middle two stitches stand in one and spread like a fan.
figure-TWO_TOGETHER = A round on the round below. In the middle two stitches stand in two and lean together to one top.
figure-INVISIBLE_JOIN = The end and the beginning of a round. The end of the yarn comes out of the last { $ends ->
    [CORNER] chain
   *[SIDE] stitch
    }, goes under both top loops of { $join ->
    [STANDING] the second stitch
   *[CHAIN] the first stitch
    }, and the needle goes back into the top where it came out. Below, it is drawn tight: the new loop lies between the end of the round and its beginning like the top of a stitch.
figure-SLIP_JOIN = The end and the beginning of a round. The hook, with the last loop on it, goes under both top loops of the first stitch. The yarn leads from the last stitch to its ball.
figure-LAYERS = Two layers one behind the other; the front one ends sooner at one end, so that the back one is seen. The hook goes under the two loops that lie between them: the back loop of the front and the near loop of the back. On the { $hand ->
    [LEFT] left
   *[RIGHT] right
    } slip stitches in a yarn of their own lie over both.
