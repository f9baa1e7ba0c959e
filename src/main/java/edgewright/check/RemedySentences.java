package edgewright.check;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;
import static edgewright.texts.Arg.number;

import edgewright.texts.Messages;

/** What each kind of remedy does, in words, as on a button. */
final class RemedySentences implements RemedyVisitor<String> {
    private final Messages says;

    RemedySentences(Messages says) {
        this.says = says;
    }

    @Override
    public String takeOut(RemedyEdit.TakeOut edit) {
        return says.text("remedy-take-out");
    }

    @Override
    public String takeOutOfRun(RemedyEdit.TakeOutOfRun edit) {
        return says.text("remedy-take-out-of-run", count("breaks", edit.breaks().size()));
    }

    @Override
    public String fillIn(RemedyEdit.FillIn edit) {
        return says.text("remedy-fill-in");
    }

    @Override
    public String backLoopBelow(RemedyEdit.BackLoopBelow edit) {
        return says.text("remedy-back-loop-below", number("below", edit.below().round()));
    }

    @Override
    public String backLoopAtLanding(RemedyEdit.BackLoopAtLanding edit) {
        return says.text(
                "remedy-back-loop-two-below", number("landing", edit.landing().round()));
    }

    @Override
    public String move(RemedyEdit.Move edit) {
        return says.text("remedy-move", number("round", edit.to().round()));
    }

    @Override
    public String breakRun(RemedyEdit.BreakRun edit) {
        return says.text("remedy-break-run", count("breaks", edit.breaks().size()));
    }

    @Override
    public String changeYarn(RemedyEdit.ChangeYarn edit) {
        return says.text(
                "remedy-change-yarn",
                number("round", edit.round()),
                arg("yarn", FindingSentences.of(says, edit.yarn())));
    }

    @Override
    public String lightenYarn(RemedyEdit.LightenYarn edit) {
        return says.text(
                "remedy-lighten-yarn",
                arg("yarn", FindingSentences.of(says, edit.yarn())),
                arg("colour", edit.colour().toString()));
    }

    @Override
    public String darkenYarn(RemedyEdit.DarkenYarn edit) {
        return says.text(
                "remedy-darken-yarn",
                arg("yarn", FindingSentences.of(says, edit.yarn())),
                arg("colour", edit.colour().toString()));
    }

    @Override
    public String changeCorners(RemedyEdit.ChangeCorners edit) {
        return says.text("remedy-change-corners", count("fromCorner", edit.a()), count("toCorner", edit.b()));
    }

    @Override
    public String evenOut(RemedyEdit.EvenOut edit) {
        return says.text("remedy-even-out", count("stitches", edit.length()));
    }

    @Override
    public String evenOutAll(RemedyEdit.EvenOutAll edit) {
        return says.text("remedy-even-out-all", count("sections", edit.sections()));
    }

    @Override
    public String allowStacking(RemedyEdit.AllowStacking edit) {
        return says.text("remedy-allow-stacking");
    }

    @Override
    public String allowCornerChains(RemedyEdit.AllowCornerChains edit) {
        return says.text("remedy-allow-corner-chains");
    }

    @Override
    public String allowRun(RemedyEdit.AllowRun edit) {
        return says.text("remedy-allow-run", count("longs", edit.length()));
    }
}
