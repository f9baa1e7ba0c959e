package edgewright.check;

/** What is to be done with each kind of remedy; whoever forgets one does not compile. */
@SuppressWarnings("MissingSummary") // each would say its name again
public interface RemedyVisitor<R> {
    R takeOut(RemedyEdit.TakeOut edit);

    R takeOutOfRun(RemedyEdit.TakeOutOfRun edit);

    R fillIn(RemedyEdit.FillIn edit);

    R backLoopBelow(RemedyEdit.BackLoopBelow edit);

    R backLoopAtLanding(RemedyEdit.BackLoopAtLanding edit);

    R move(RemedyEdit.Move edit);

    R breakRun(RemedyEdit.BreakRun edit);

    R changeYarn(RemedyEdit.ChangeYarn edit);

    R lightenYarn(RemedyEdit.LightenYarn edit);

    R darkenYarn(RemedyEdit.DarkenYarn edit);

    R changeCorners(RemedyEdit.ChangeCorners edit);

    R evenOut(RemedyEdit.EvenOut edit);

    R evenOutAll(RemedyEdit.EvenOutAll edit);

    R allowStacking(RemedyEdit.AllowStacking edit);

    R allowCornerChains(RemedyEdit.AllowCornerChains edit);

    R allowRun(RemedyEdit.AllowRun edit);
}
