package edgewright.check;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;
import static edgewright.texts.Arg.number;

import edgewright.chart.SideShape;
import edgewright.texts.Messages;

/** The sentence of each kind of violation: what is wrong and why hands cannot do it. */
final class ViolationSentences implements Violation.Visitor<String> {
    private final Messages says;

    ViolationSentences(Messages says) {
        this.says = says;
    }

    @Override
    public String noRoundBelow(Violation.NoRoundBelow violation) {
        return says.text("rule-no-round-below");
    }

    @Override
    public String pastCorner(Violation.PastCorner violation) {
        return says.text("rule-past-corner", arg("corner", FindingSentences.of(says, violation.corner())));
    }

    @Override
    public String coveredLoop(Violation.CoveredLoop violation) {
        return says.text("rule-covered-loop", number("below", below(violation)));
    }

    @Override
    public String usedLoop(Violation.UsedLoop violation) {
        return says.text(
                "rule-used-loop", number("below", below(violation)), number("landing", violation.landingRound()));
    }

    @Override
    public String landsOnLong(Violation.LandsOnLong violation) {
        return says.text("rule-lands-on-long", number("landing", violation.landingRound()));
    }

    @Override
    public String landsOnChain(Violation.LandsOnChain violation) {
        return says.text("rule-lands-on-chain", number("landing", violation.landingRound()));
    }

    @Override
    public String landsOnCornerChain(Violation.LandsOnCornerChain violation) {
        return says.text(
                "rule-lands-on-corner-chain",
                arg("corner", FindingSentences.of(says, violation.corner())),
                number("landing", violation.landingRound()));
    }

    @Override
    public String chainAtCorner(Violation.ChainAtCorner violation) {
        return says.text("rule-chain-at-corner", arg("corner", FindingSentences.of(says, violation.corner())));
    }

    @Override
    public String otherYarn(Violation.OtherYarn violation) {
        return says.text(
                "rule-other-yarn",
                arg("own", FindingSentences.of(says, violation.own())),
                number("landing", violation.landingRound()),
                arg("landingYarn", FindingSentences.of(says, violation.landing())));
    }

    @Override
    public String deepGap(Violation.DeepGap violation) {
        return says.text("rule-deep-gap", number("below", below(violation)));
    }

    @Override
    public String unseenLong(Violation.UnseenLong violation) {
        return says.text(
                "rule-unseen-long",
                number("below", below(violation)),
                arg("yarn", FindingSentences.of(says, violation.yarn())));
    }

    @Override
    public String looseRun(Violation.LooseRun violation) {
        return says.text(
                "rule-loose-run", count("longs", violation.length().orElse(0)), count("allowed", violation.allowed()));
    }

    @Override
    public String raggedSection(Violation.RaggedSection violation) {
        return says.text(
                "rule-ragged-section", count("stitches", violation.length()), count("expected", violation.expected()));
    }

    @Override
    public String unclosedSide(Violation.UnclosedSide violation) {
        SideShape shape = violation.shape();
        int stitches = violation.stitches();
        return says.text(
                "rule-unclosed-side",
                count("stitches", stitches),
                count("multiple", shape.w()),
                count("plus", shape.fewestStitches(0)),
                count("tooMany", shape.toLose(0, stitches).orElse(0)),
                count("tooFew", shape.toAdd(0, stitches)));
    }

    @Override
    public String lowContrast(Violation.LowContrast violation) {
        return says.text(
                "rule-low-contrast",
                arg("inner", FindingSentences.of(says, violation.inner())),
                arg("outer", FindingSentences.of(says, violation.outer())));
    }

    private static int below(Violation.OfStitch violation) {
        return violation.stitch().round() - 1;
    }
}
