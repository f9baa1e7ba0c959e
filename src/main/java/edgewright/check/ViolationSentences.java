package edgewright.check;

import edgewright.chart.SideShape;

/** The sentence of each kind of violation: what is wrong and why hands cannot do it. */
final class ViolationSentences implements Violation.Visitor<String> {
    private final FindingSentences sentences;

    ViolationSentences(FindingSentences sentences) {
        this.sentences = sentences;
    }

    @Override
    public String noRoundBelow(Violation.NoRoundBelow violation) {
        return sentences.text("rule.no-round-below");
    }

    @Override
    public String pastCorner(Violation.PastCorner violation) {
        return sentences.text("rule.past-corner", sentences.of(violation.corner()));
    }

    @Override
    public String coveredLoop(Violation.CoveredLoop violation) {
        return sentences.text("rule.covered-loop", below(violation));
    }

    @Override
    public String usedLoop(Violation.UsedLoop violation) {
        return sentences.text("rule.used-loop", below(violation), twoBelow(violation));
    }

    @Override
    public String landsOnLong(Violation.LandsOnLong violation) {
        return sentences.text("rule.lands-on-long", twoBelow(violation));
    }

    @Override
    public String landsOnChain(Violation.LandsOnChain violation) {
        return sentences.text("rule.lands-on-chain", twoBelow(violation));
    }

    @Override
    public String landsOnCornerChain(Violation.LandsOnCornerChain violation) {
        return sentences.text("rule.lands-on-corner-chain", sentences.of(violation.corner()), twoBelow(violation));
    }

    @Override
    public String chainAtCorner(Violation.ChainAtCorner violation) {
        return sentences.text("rule.chain-at-corner", sentences.of(violation.corner()));
    }

    @Override
    public String otherYarn(Violation.OtherYarn violation) {
        return sentences.text(
                "rule.other-yarn",
                sentences.of(violation.own()),
                twoBelow(violation),
                sentences.of(violation.landing()));
    }

    @Override
    public String deepGap(Violation.DeepGap violation) {
        return sentences.text("rule.deep-gap", below(violation));
    }

    @Override
    public String unseenLong(Violation.UnseenLong violation) {
        return sentences.text("rule.unseen-long", below(violation), sentences.of(violation.yarn()));
    }

    @Override
    public String looseRun(Violation.LooseRun violation) {
        return sentences.text("rule.loose-run", violation.length().orElse(0), violation.allowed());
    }

    @Override
    public String raggedSection(Violation.RaggedSection violation) {
        return sentences.text("rule.ragged-section", violation.length(), violation.expected());
    }

    @Override
    public String unclosedSide(Violation.UnclosedSide violation) {
        SideShape shape = violation.shape();
        int stitches = violation.stitches();
        return sentences.text(
                "rule.unclosed-side",
                stitches,
                shape.w(),
                shape.fewestStitches(0),
                shape.toLose(0, stitches).orElse(0),
                shape.toAdd(0, stitches));
    }

    @Override
    public String lowContrast(Violation.LowContrast violation) {
        return sentences.text("rule.low-contrast", sentences.of(violation.inner()), sentences.of(violation.outer()));
    }

    private static int below(Violation.OfStitch violation) {
        return violation.stitch().round() - 1;
    }

    private static int twoBelow(Violation.OfStitch violation) {
        return violation.stitch().round() - 2;
    }
}
