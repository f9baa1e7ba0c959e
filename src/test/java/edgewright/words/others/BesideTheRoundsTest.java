package edgewright.words.others;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.PerSide;
import edgewright.texts.English;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lines that stand beside the rounds: what says nothing to a hook is prose, and what changes the work is never lost. */
class BesideTheRoundsTest {
    private static final String TEXT = """
            Heron Slip Border
            @head@

            Materials
            DK cotton in two colours, A (Peat) and B (Foam).
            @materials@

            Notes
            This pattern is written in UK terms.
            @notes@
            dc: double crochet in the back loop only.
            drop tr: treble in the front loop of the stitch two rounds below, missing the stitch behind it.
            Each side of the base round has a multiple of 4 sts plus 3.
            Corner: (1 dc, 2 ch, 1 dc) in the 2-ch corner space.
            All four sides are worked alike.

            Rounds
            Round 1 (A): 1 dc in each st. (45 sts)
            Round 2 (B): 1 dc in each st. (47 sts)
            @rounds@
            Round 3 (A): 3 dc, *1 drop tr, 3 dc; rep from * to end of side. (49 sts)
            Round 4 (B): 1 dc in each st. (51 sts)

            Finishing
            Weave in all ends.
            @end@
            """;

    private static OthersReading read(String place, String line) {
        String text =
                TEXT.replace("@" + place + "@", line).lines().filter(each -> !each.startsWith("@")).toList().stream()
                        .reduce("", (before, each) -> before + each + "\n");
        return OthersReader.read(text, English.LANGUAGE, Optional.empty(), Optional.of(PerSide.all(43)));
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            head | by Wil Sandsmoor
            head | Designed by Wil Sandsmoor, 2026
            head | A free pattern by the Heron Slip Makers
            head | Version 2.1, corrected March 2026
            head | Pattern no. 14
            head | Page 1 of 2
            head | Skill level: easy
            head | Difficulty: 2 out of 5
            head | Time needed: about 3 evenings for a baby blanket
            head | First published in the Creek Bulletin, issue 7
            head | www.heronslip.example
            head | You will need to know how to work double crochet and treble crochet.
            head | If you can work a double crochet, you can make this border.
            head | It took me two rounds to understand how it works.
            head | The border is 4 rounds deep and about 3 cm wide.
            head | Only one colour is worked in each round, so you never carry yarn.
            head | There are only two stitches to learn.
            head | The drop stitches hide the row below like posts in the tide.
            head | No cutting of yarn every round!
            head | A four-round border that suits any square.
            head | Four rounds, two colours, no fuss.
            materials | Yarn: 2 x 50 g balls of each colour
            materials | A: Peat, 50 g / 120 m, 1 ball
            materials | B: Foam, 50 g / 120 m, 2 balls
            materials | 100 g of DK weight yarn in each of two colours
            materials | Hook: 4 mm (US G/6)
            materials | 1 stitch marker
            materials | 4 stitch markers, one for each corner
            materials | Tapestry needle, scissors
            materials | Stitch markers for the corners
            materials | Approx. 30 m of A and 25 m of B for a square of 43 sts
            notes | Gauge: 18 sts and 20 rounds = 10 cm
            notes | Gauge is not important for this border.
            notes | Tension: 18 sts to 10 cm in dc
            notes | Finished width: 3 cm
            notes | The border is worked from the right side throughout.
            notes | Do not turn at the end of a round.
            notes | Every round is worked with the right side facing.
            notes | Always work with the right side of the work facing you.
            notes | Each round begins and ends in the same corner.
            notes | Join each round with a slip stitch to the first stitch.
            notes | Join with a sl st in the first dc.
            notes | Start each round with a standing dc.
            notes | Cut the yarn after every round.
            notes | Fasten off at the end of every round and weave in the ends as you go.
            notes | Use a stitch marker in each corner space.
            notes | The number in brackets at the end of a round is the number of sts on one side.
            notes | The figures in brackets are the stitches on each side after the round.
            notes | Stitch counts are given in brackets at the end of each round.
            notes | Stitch counts do not include the corner chains.
            notes | Chains of the corner are not counted.
            notes | The corner ch-2 is never counted as a stitch.
            notes | Repeat the part between the asterisks.
            notes | Work the instructions after * as many times as needed.
            notes | Instructions in square brackets are worked the number of times stated after them.
            notes | * marks the start of a repeat.
            notes | An asterisk (*) marks the beginning of a repeat.
            notes | Read the whole pattern before you start.
            notes | The pattern is written for a sample with 43 sts on each side.
            notes | Each round adds 2 sts to each side.
            notes | Every round adds two stitches to every side.
            notes | You gain 2 stitches per side in each round.
            notes | Count your stitches after every round.
            notes | Work loosely: tight drop stitches will pucker the border.
            notes | Colour A is used in odd rounds, colour B in even rounds.
            notes | Change colour every round.
            notes | Long stitches are taller than they look; pull the loop up.
            notes | If your edge ruffles, go down a hook size.
            notes | If your edge ruffles, use a hook 0.5 mm smaller.
            notes | For a tighter edge, use a 3.5 mm hook.
            notes | sp = space, st(s) = stitch(es), ch = chain, rnd = round
            notes | st(s): stitch(es)
            notes | ch: chain
            notes | rep: repeat
            notes | RS: right side
            notes | tr: treble crochet
            notes | sl st: slip stitch
            notes | MC: main colour
            notes | Base round
            notes | Base round: with A, work 43 dc along each side and 2 ch in each corner.
            notes | With A, work a round of dc along all four sides, with 43 dc on each side and 2 ch at each corner.
            notes | Pick up 1 stitch for each stitch or 3 for every 4 row ends.
            notes | Along row ends, work 3 dc for every 4 rows.
            rounds | Nearly there now.
            rounds | The next round is where the magic happens.
            rounds | Now the drop stitches begin.
            rounds | Take care with the next round.
            rounds | Stop here and put your feet up.
            rounds | You are now half way.
            rounds | From here on the pattern shows.
            rounds | Fasten off A.
            rounds | Page 2
            end | Block to size, 30 cm square.
            end | Steam lightly; do not press, as the long stitches will flatten.
            end | Fasten off and weave in ends. Block gently.
            end | Add a last round of slip stitches if you like.
            end | There will be 16 ends to weave in.
            end | Wash at 30 degrees.
            end | Press under a damp cloth with a warm iron, 2 seconds at a time.
            end | Repeat for the other three blankets of the set.
            end | Copyright 2026 Wil Sandsmoor. All rights reserved.
            end | (c) 2026 Heron Slip Makers
            end | (c) Wil Sandsmoor 2026
            end | For personal use only. Do not sell this pattern, but do sell what you make.
            end | Thanks to my four testers, who found 3 mistakes.
            end | Thank you for making it! Tag your pictures #heronslip
            end | Questions? Write to wil@heronslip.example
            end | If you make one, I would love to see it.
            end | Made by hand at Heron Slip.
            end | Test-knit by Ada and tested by 2 others.
            end | Errata: none so far.
            end | See also my other patterns: Low Water and Nine Piles.
            end | I made six of these for the church sale and sold all but one.
            end | Happy hooking!
            end | -- 3 --
            end | 1/2
            """)
    void aLineThatSaysNothingToAHookIsRead(String place, String line) {
        assertThat(read(place, line).remarks()).isEmpty();
        assertThat(read(place, line).pattern().orElseThrow().rounds())
                .isEqualTo(read("head", "").pattern().orElseThrow().rounds());
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            notes | Turn at the end of every round.
            notes | Turn the work after each round.
            notes | Even rounds are worked from the wrong side.
            notes | Work all even rounds with the wrong side facing.
            notes | Round 3 is worked from the wrong side.
            notes | Work from left to right.
            notes | Work each round twice.
            notes | Work every round again before you go on.
            notes | Work the rounds in the order 1, 3, 2, 4.
            notes | Work the rounds backwards.
            notes | Start with the last round.
            notes | Leave out the corner stitches in round 3.
            notes | The corners of round 3 have no chains.
            notes | The corners have three chains from round 3 on.
            notes | From round 3 on, put only one stitch in each corner.
            notes | From round 3 on there are three chains in each corner.
            notes | On the short sides, begin at the other end.
            notes | The short sides are worked the other way round.
            notes | The left and right sides are mirrored.
            notes | The long sides have a plain stitch instead.
            notes | The last stitch of every side is plain.
            notes | The first and last stitches of each side are in both loops.
            notes | All stitches are worked in the front loop.
            notes | Long stitches go one round down only.
            notes | Long stitches reach down three rounds.
            notes | Drop tr are made three rounds below.
            notes | Work a chain above every drop tr.
            notes | Never put anything in the corner.
            notes | Round 3 is left out on the short sides.
            notes | Round 3 is only for the long sides.
            notes | Finish with a plain round in A.
            notes | Begin and end with a plain round.
            notes | A is used for all rounds but the last.
            notes | Both yarns are held together in round 3.
            notes | Yarn B is only used in round 3.
            notes | Every fourth stitch is long.
            notes | Put a long stitch over every post.
            rounds | Turn.
            rounds | Work another round like this.
            rounds | Work one more round in the same way.
            rounds | Repeat until the border is wide enough.
            rounds | Do the last two rounds again.
            rounds | Do that again.
            rounds | Then the same in B.
            rounds | Now a plain round in B.
            rounds | Now one round plain.
            rounds | Then plain all round.
            rounds | Plain round in A.
            rounds | Work a row of crab stitch.
            rounds | Two plain rounds in A.
            rounds | And once more in A.
            rounds | Swap the colours.
            rounds | Swap the yarns from here on.
            rounds | From here on, work in the front loops.
            rounds | From here on, put one chain in each corner.
            rounds | From here on, keep the corners plain.
            rounds | Turn the work over.
            rounds | In round 3, swap A and B.
            rounds | In round 3 the sides are shifted by one stitch.
            rounds | In round 3 begin at the marker.
            end | Finish with a round of dc.
            end | Work one round of dc in A to finish.
            end | Last of all, one plain round in B.
            end | End with two rounds of A.
            end | Then work rounds 1 to 4 again.
            end | Repeat rounds 1 to 4 for a wider border.
            end | Round 5: 1 dc in each st.
            """)
    void aLineThatChangesTheWorkIsRefusedAtItsPlace(String place, String line) {
        OthersReading reading = read(place, line);
        assertThat(reading.remarks()).isNotEmpty();
        int at = reading.remarks().get(0).line();
        assertThat(reading.account().lines().get(at - 1).text()).isEqualTo(line);
    }
}
