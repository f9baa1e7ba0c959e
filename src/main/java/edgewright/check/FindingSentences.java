package edgewright.check;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;
import static edgewright.texts.Arg.number;

import edgewright.chart.CornerEnd;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.Side;
import edgewright.chart.Yarn;
import edgewright.texts.Language;
import edgewright.texts.Messages;

/** Says findings, remedies and places in words. */
public final class FindingSentences {
    private final Messages says;

    /** The sentences in that language. */
    public FindingSentences(Language language) {
        this.says = language.messages("check");
    }

    /** One sentence: what is wrong and why hands cannot do it. It does not say where; see {@link #of(FindingPlace)}. */
    public String of(Finding finding) {
        return finding.violation().accept(new ViolationSentences(says));
    }

    /** What the remedy does and how much of the fabric then looks otherwise, without a full stop. */
    public String of(Remedy remedy) {
        return says.text("remedy", arg("action", action(remedy)), count("squares", remedy.changedCells()));
    }

    /** What the remedy does alone, as in the name of an edit, without a full stop. */
    public String action(Remedy remedy) {
        return remedy.edit().accept(new RemedySentences(says));
    }

    /** Where a finding is, with a capital letter and without a full stop. */
    public String of(FindingPlace place) {
        return place.accept(new FindingPlace.Visitor<String>() {
            @Override
            public String stitch(Place stitch) {
                return says.text(
                        "where-stitch",
                        number("round", stitch.round()),
                        arg("section", of(stitch.section())),
                        number("stitch", stitch.place()));
            }

            @Override
            public String section(int round, Section section) {
                return says.text("where-section", number("round", round), arg("section", of(section)));
            }

            @Override
            public String round(int round) {
                return says.text("where-round", number("round", round));
            }

            @Override
            public String side(Side side) {
                return says.text("where-side", arg("side", says.text("side-" + side)));
            }
        });
    }

    /** The name of a rule, as a heading. */
    public String title(String rule) {
        return says.text("title-" + rule);
    }

    static String of(Messages says, CornerEnd corner) {
        return says.text("corner-" + corner);
    }

    static String of(Messages says, Yarn yarn) {
        return says.text("yarn", arg("name", yarn.name()), arg("id", yarn.id()));
    }

    private String of(Section section) {
        return says.text("section-" + section);
    }
}
