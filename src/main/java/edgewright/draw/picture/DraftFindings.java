package edgewright.draw.picture;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;
import static edgewright.texts.Arg.number;

import edgewright.check.Finding;
import edgewright.check.FindingSentences;
import edgewright.check.Verdict;
import edgewright.draw.marks.Drawing;
import edgewright.draw.marks.Mark;
import edgewright.draw.marks.MarkKind;
import edgewright.draw.paint.Area;
import edgewright.draw.paint.Palette;
import edgewright.draw.paint.PenPath;
import edgewright.draw.paint.Shape;
import edgewright.texts.Messages;
import java.util.ArrayList;
import java.util.List;

/** Marks a drawing as a draft: below it stands that it is one, and what was found, numbered like the rings in it. */
public final class DraftFindings {
    private static final double SIZE_MM = 3.4;
    private static final double LINE_MM = 5;
    private static final double EDGE_MM = 5;

    /** So many findings are listed; the others are counted. */
    private static final int MOST_FINDINGS = 60;

    private DraftFindings() {}

    /** The drawing on a sheet that is longer at its foot. */
    public static Drawing under(Drawing drawing, Verdict verdict, PictureStyle style) {
        Palette palette = style.palette();
        List<String> lines = lines(verdict, style);
        double stripMm = lines.size() * LINE_MM + 2 * EDGE_MM;
        Area strip = new Area(0, drawing.heightMm(), drawing.widthMm(), stripMm);
        List<Mark> marks = new ArrayList<>();
        marks.add(Mark.beside(MarkKind.PAPER, List.of(new Shape.Fill(PenPath.rectangle(strip), palette.paper()))));
        marks.addAll(drawing.marks());
        for (int i = 0; i < lines.size(); i++) {
            Shape.Weight weight = i == 0 ? Shape.Weight.BOLD : Shape.Weight.REGULAR;
            double size = CornerSheet.fitted(lines.get(i), weight, SIZE_MM, drawing.widthMm() - 2 * EDGE_MM);
            marks.add(Mark.beside(
                    MarkKind.CAPTION,
                    List.of(new Shape.Text(
                            lines.get(i),
                            EDGE_MM,
                            drawing.heightMm() + EDGE_MM + i * LINE_MM,
                            size,
                            weight,
                            Shape.Anchor.START,
                            0,
                            i == 0 ? palette.error() : palette.ink()))));
        }
        return new Drawing(
                drawing.widthMm(),
                drawing.heightMm() + stripMm,
                style.says().text("draft-title", arg("title", drawing.title())),
                drawing.description(),
                marks);
    }

    private static List<String> lines(Verdict verdict, PictureStyle style) {
        Messages says = style.says();
        FindingSentences sentences = new FindingSentences(style.language());
        List<String> lines = new ArrayList<>();
        lines.add(says.text("draft"));
        List<Finding> findings = verdict.findings();
        for (int i = 0; i < Math.min(findings.size(), MOST_FINDINGS); i++) {
            Finding finding = findings.get(i);
            lines.add(says.text(
                    "draft-finding",
                    number("finding", i + 1),
                    arg("place", sentences.of(finding.place())),
                    arg("rule", sentences.title(finding.rule()))));
        }
        int more = verdict.count().all() - MOST_FINDINGS;
        if (more > 0) {
            lines.add(says.text("draft-more", count("findings", more)));
        }
        return lines;
    }
}
