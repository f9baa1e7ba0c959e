package edgewright.words.page;

import static edgewright.texts.Arg.count;

import edgewright.chart.Chart;
import edgewright.chart.PerSide;
import edgewright.chart.Yarn;
import edgewright.texts.Messages;
import edgewright.words.technique.ToldTechnique;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * A written pattern as one file of HTML, which asks for nothing from elsewhere. Parts have headings of the second level and
 * rounds of the third, words and yarns stand in definition lists, counts in a table whose heads say which way they go. Of two
 * versions what differs is a section with a heading and a language of its own, and its parts and rounds are one level lower; what
 * has no terms in it, and the chart, stand once. It is made for narrow and wide screens, light and dark, for paper, and for whoever has it read aloud.
 */
public final class HtmlPage implements TextBlockPrinter {
    private static final String STYLE = HtmlWords.style();

    private final Messages says;
    private final List<Yarn> yarns;
    private final List<TermsVersion> versions;
    private final boolean single;
    /** What several versions share. */
    private final TermsParts shared;
    /** Whether a part of one version among several is printed. */
    private boolean inVersion;

    private final OwnParts own;
    private final Figures figures;
    private final StringBuilder html = new StringBuilder();
    private PatternPart.Kind kind = PatternPart.Kind.HEADING;
    /** Parts of which a version was printed, with the pictures that stand beside them. */
    private final Set<PatternPart.Kind> shownBeside = EnumSet.noneOf(PatternPart.Kind.class);

    private boolean inList;
    private int yarnsSeen;
    /** Before the ids of the version that is being printed. */
    private String prefix = "";

    private HtmlPage(Chart chart, List<TermsVersion> versions, OwnParts own, Figures figures) {
        this.own = own;
        this.figures = figures;
        this.says = versions.get(0).language().messages("words/page");
        this.yarns = chart.yarnsUsed();
        this.single = versions.size() == 1;
        this.shared = new TermsParts(versions);
        this.versions = single ? versions : shared.apart();
    }

    /** Makes the figure of a technique, an element that shows it and says what it shows; the text goes before each id in it. */
    public interface Figures {
        /** No figures. */
        Figures NONE = (told, prefix) -> "";

        String of(ToldTechnique told, String prefix);
    }

    /**
     * The border as it looks when it is worked.
     *
     * @param picture an element that shows it and says what it shows
     * @param repeats how often the repeat is worked on each side of it; opposite sides equal
     */
    public record Fabric(String picture, PerSide<Integer> repeats) {}

    /**
     * The page.
     *
     * @param versions of the pattern of this chart, one for each of the terms; at least one
     * @param chart whose pattern it is; its yarns lend their colours
     * @param fabric the worked border, before all else; empty for none
     * @param picture an element that shows the chart and says what it shows, before the rounds; empty for none
     */
    public static String of(
            List<TermsVersion> versions, Chart chart, Optional<Fabric> fabric, Optional<String> picture) {
        return of(versions, chart, fabric, picture, OwnParts.NONE, Figures.NONE);
    }

    /**
     * The same with what the designer adds.
     *
     * @param figures for the techniques that the words tell
     */
    public static String of(
            List<TermsVersion> versions,
            Chart chart,
            Optional<Fabric> fabric,
            Optional<String> picture,
            OwnParts own,
            Figures figures) {
        HtmlPage page = new HtmlPage(chart, versions, own, figures);
        page.head(versions.get(0));
        page.contents(picture.isPresent());
        page.html.append("<main>\n");
        fabric.ifPresent(page::fabric);
        page.own(own.opening(), 0);
        if (page.single) {
            page.parts(versions.get(0), picture);
        } else {
            page.shared.before().forEach(page::part);
            picture.ifPresent(page::picture);
            page.versions.forEach(page::version);
            page.end();
            page.shared.after().forEach(page::part);
        }
        page.own(own.closing(), own.opening().size());
        page.html.append("</main>\n").append(OwnHtml.imprint(own.imprint())).append("</body>\n</html>\n");
        return page.html.toString();
    }

    private void head(TermsVersion first) {
        PatternPart heading = first.heading();
        String title = heading.heading().isBlank() ? says.text("untitled") : heading.heading();
        html.append("<!DOCTYPE html>\n<html lang=\"")
                .append(first.tag())
                .append("\">\n<head>\n<meta charset=\"utf-8\">\n<title>")
                .append(HtmlWords.escape(title))
                .append("</title>\n<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n")
                .append("<meta name=\"color-scheme\" content=\"light dark\">\n<style>\n")
                .append(STYLE)
                .append("</style>\n</head>\n<body>\n<header>\n");
        element("h1", title);
        heading.blocks().forEach(block -> block.printOn(this));
        html.append(OwnHtml.pictures(own.cover().stream().toList()));
        html.append("</header>\n");
    }

    private void contents(boolean chart) {
        html.append("<nav aria-labelledby=\"contents\">\n<h2 id=\"contents\">")
                .append(HtmlWords.escape(says.text("contents")))
                .append("</h2>\n<ol>\n");
        ownLinks(own.opening(), 0);
        if (single) {
            links(versions.get(0), chart);
        } else {
            shared.before().forEach(part -> link(id(part), part.heading()));
            if (chart) {
                link("chart", says.text("chart"));
            }
            for (TermsVersion version : versions) {
                begin(version);
                html.append("<li lang=\"").append(version.tag()).append("\"><a href=\"#");
                html.append(version.id())
                        .append("\">")
                        .append(HtmlWords.escape(version.name()))
                        .append("</a>\n<ol>\n");
                links(version, false);
                html.append("</ol>\n</li>\n");
            }
            end();
            shared.after().forEach(part -> link(id(part), part.heading()));
        }
        ownLinks(own.closing(), own.opening().size());
        html.append("</ol>\n</nav>\n");
    }

    private void ownLinks(List<OwnParts.Part> parts, int before) {
        for (int i = 0; i < parts.size(); i++) {
            link("own-" + (before + i), parts.get(i).title());
        }
    }

    private void own(List<OwnParts.Part> parts, int before) {
        for (int i = 0; i < parts.size(); i++) {
            html.append(OwnHtml.section(parts.get(i), "own-" + (before + i)));
        }
    }

    private void links(TermsVersion version, boolean chart) {
        for (PatternPart part : version.body()) {
            if (part.kind() == PatternPart.Kind.ROUNDS && chart) {
                link("chart", says.text("chart"));
            }
            link(id(part), part.heading());
        }
    }

    private void link(String id, String words) {
        html.append("<li><a href=\"#").append(id).append("\">");
        html.append(HtmlWords.escape(words)).append("</a></li>\n");
    }

    private void fabric(Fabric fabric) {
        html.append("<figure>\n").append(fabric.picture());
        element(
                "figcaption",
                says.text(
                        "fabric",
                        count("across", fabric.repeats().top()),
                        count("down", fabric.repeats().left())));
        html.append("</figure>\n");
    }

    private void picture(String picture) {
        html.append("<section>\n<h2 id=\"chart\">")
                .append(HtmlWords.escape(says.text("chart")))
                .append("</h2>\n<figure>\n")
                .append(picture);
        element("figcaption", says.text("picture"));
        html.append("</figure>\n</section>\n");
    }

    private void version(TermsVersion version) {
        begin(version);
        html.append("<section class=\"version\" lang=\"").append(version.tag()).append("\">\n<h2 id=\"");
        html.append(version.id())
                .append("\">")
                .append(HtmlWords.escape(version.name()))
                .append("</h2>\n");
        parts(version, Optional.empty());
        html.append("</section>\n");
    }

    private void begin(TermsVersion version) {
        inVersion = true;
        prefix = version.id() + "-";
    }

    /** What follows belongs to no version. */
    private void end() {
        inVersion = false;
        prefix = "";
    }

    private void parts(TermsVersion version, Optional<String> picture) {
        for (PatternPart part : version.body()) {
            if (part.kind() == PatternPart.Kind.ROUNDS) {
                picture.ifPresent(this::picture);
            }
            part(part);
        }
    }

    private void part(PatternPart part) {
        kind = part.kind();
        String level = inVersion ? "h3" : "h2";
        html.append(kind == PatternPart.Kind.TECHNIQUES ? "<section class=\"techniques\">\n<" : "<section>\n<")
                .append(level)
                .append(" id=\"")
                .append(id(part))
                .append("\">");
        html.append(HtmlWords.escape(part.heading())).append("</").append(level).append(">\n");
        part.blocks().forEach(block -> block.printOn(this));
        endList();
        if (shownBeside.add(kind)) {
            html.append(OwnHtml.pictures(own.beside(kind)));
        }
        html.append("</section>\n");
    }

    private String id(PatternPart part) {
        return prefix + "part-" + part.kind().ordinal();
    }

    @Override
    public void prose(TextBlock.Prose prose) {
        endList();
        element("p", prose.text());
    }

    @Override
    public void entry(TextBlock.Entry entry) {
        if (!inList) {
            html.append("<dl>\n");
            inList = true;
        }
        html.append("<div><dt>")
                .append(chip())
                .append(HtmlWords.escape(entry.word()))
                .append("</dt><dd>");
        html.append(HtmlWords.escape(entry.text())).append("</dd></div>\n");
    }

    /** A square in the colour of the yarn whose turn it is. The yarns of a pattern are those that its chart uses, in their order. */
    private String chip() {
        if (kind != PatternPart.Kind.NEEDS || yarnsSeen == yarns.size()) {
            return "";
        }
        Yarn yarn = yarns.get(yarnsSeen);
        yarnsSeen++;
        return "<span class=\"chip\" style=\"border-color: " + yarn.colour() + "\"></span>";
    }

    @Override
    public void round(TextBlock.RoundWords round) {
        endList();
        html.append("<div class=\"round\" id=\"")
                .append(prefix)
                .append("round-")
                .append(round.round())
                .append("\">\n");
        element(inVersion ? "h4" : "h3", round.name());
        round.steps().stream().forEach(line -> element("p", line));
        html.append("</div>\n");
    }

    @Override
    public void counts(TextBlock.CountsTable table) {
        endList();
        html.append("<table>\n<caption>")
                .append(HtmlWords.escape(table.caption()))
                .append("</caption>\n");
        head(table.columns(), true);
        for (List<String> row : table.rows()) {
            html.append("<tr><th scope=\"row\">")
                    .append(HtmlWords.escape(row.get(0)))
                    .append("</th>");
            for (int column = 1; column < row.size(); column++) {
                html.append("<td").append(ofColumn(column)).append('>');
                html.append(HtmlWords.escape(row.get(column))).append("</td>");
            }
            html.append("</tr>\n");
        }
        html.append("</tbody>\n</table>\n");
    }

    @Override
    public void rounds(TextBlock.RoundsTable table) {
        endList();
        html.append("<div class=\"rounds\" role=\"region\" tabindex=\"0\" aria-labelledby=\"")
                .append(prefix)
                .append("part-")
                .append(kind.ordinal())
                .append("\">\n<table>\n");
        head(table.columns(), false);
        for (TextBlock.RoundRow row : table.rows()) {
            html.append("<tr id=\"").append(prefix).append("round-").append(row.round());
            html.append("\"><th scope=\"row\">")
                    .append(HtmlWords.escape(row.cells().get(0)))
                    .append("</th>");
            for (int cell = 1; cell < row.cells().size(); cell++) {
                html.append(row.across() && cell == 2 ? "<td colspan=\"3\">" : "<td>");
                html.append(HtmlWords.escape(row.cells().get(cell))).append("</td>");
            }
            html.append("</tr>\n");
        }
        html.append("</tbody>\n</table>\n</div>\n");
    }

    /** @param numbers whether all columns but the first two hold numbers */
    private void head(List<String> columns, boolean numbers) {
        html.append("<thead>\n<tr>");
        for (int column = 0; column < columns.size(); column++) {
            html.append("<th scope=\"col\"")
                    .append(numbers ? ofColumn(column) : "")
                    .append('>');
            html.append(HtmlWords.escape(columns.get(column))).append("</th>");
        }
        html.append("</tr>\n</thead>\n<tbody>\n");
    }

    /** Round and yarn come first; all other columns are counts. */
    private static String ofColumn(int column) {
        return column < 2 ? "" : " class=\"number\"";
    }

    @Override
    public void technique(TextBlock.Technique technique) {
        endList();
        ToldTechnique told = technique.told();
        String name = told.shown().kind().name().toLowerCase(Locale.ROOT).replace('_', '-');
        String id = prefix + "technique-" + name + "-" + told.shown().chains() + "-";
        html.append("<div>\n");
        element(inVersion ? "h4" : "h3", told.title());
        html.append("<figure>\n").append(figures.of(told, id)).append("</figure>\n<ol>\n");
        told.steps()
                .forEach(step ->
                        html.append("<li><p>").append(HtmlWords.escape(step)).append("</p></li>\n"));
        html.append("</ol>\n</div>\n");
    }

    private void endList() {
        if (inList) {
            html.append("</dl>\n");
            inList = false;
        }
    }

    private void element(String name, String words) {
        html.append('<')
                .append(name)
                .append('>')
                .append(HtmlWords.escape(words))
                .append("</")
                .append(name)
                .append(">\n");
    }
}
