package edgewright.check;

/** What each kind of remedy does, in words, as on a button. */
final class RemedySentences implements RemedyVisitor<String> {
    private final FindingSentences sentences;

    RemedySentences(FindingSentences sentences) {
        this.sentences = sentences;
    }

    @Override
    public String takeOut(RemedyEdit.TakeOut edit) {
        return said(edit);
    }

    @Override
    public String takeOutOfRun(RemedyEdit.TakeOutOfRun edit) {
        return said(edit, edit.breaks().size());
    }

    @Override
    public String fillIn(RemedyEdit.FillIn edit) {
        return said(edit);
    }

    @Override
    public String backLoopBelow(RemedyEdit.BackLoopBelow edit) {
        return said(edit, edit.below().round());
    }

    @Override
    public String backLoopTwoBelow(RemedyEdit.BackLoopTwoBelow edit) {
        return said(edit, edit.below().round());
    }

    @Override
    public String move(RemedyEdit.Move edit) {
        return said(edit, edit.to().round());
    }

    @Override
    public String breakRun(RemedyEdit.BreakRun edit) {
        return said(edit, edit.breaks().size());
    }

    @Override
    public String changeYarn(RemedyEdit.ChangeYarn edit) {
        return said(edit, edit.round(), sentences.of(edit.yarn()));
    }

    @Override
    public String lightenYarn(RemedyEdit.LightenYarn edit) {
        return said(edit, sentences.of(edit.yarn()), edit.colour().toString());
    }

    @Override
    public String darkenYarn(RemedyEdit.DarkenYarn edit) {
        return said(edit, sentences.of(edit.yarn()), edit.colour().toString());
    }

    @Override
    public String changeCorners(RemedyEdit.ChangeCorners edit) {
        return said(edit, edit.a(), edit.b());
    }

    @Override
    public String evenOut(RemedyEdit.EvenOut edit) {
        return said(edit, edit.length());
    }

    @Override
    public String evenOutAll(RemedyEdit.EvenOutAll edit) {
        return said(edit, edit.sections());
    }

    @Override
    public String allowStacking(RemedyEdit.AllowStacking edit) {
        return said(edit);
    }

    @Override
    public String allowCornerChains(RemedyEdit.AllowCornerChains edit) {
        return said(edit);
    }

    @Override
    public String allowRun(RemedyEdit.AllowRun edit) {
        return said(edit, edit.length());
    }

    private String said(RemedyEdit edit, Object... numbersAndWords) {
        return sentences.text("remedy." + edit.id(), numbersAndWords);
    }
}
