package edgewright.words.page;

import edgewright.words.own.OwnText;
import java.util.List;

/** What a designer adds, as elements of a page. */
final class OwnHtml {
    private OwnHtml() {}

    /** A section with a heading; its pictures stand after its text. */
    static String section(OwnParts.Part part, String id) {
        StringBuilder html = new StringBuilder("<section class=\"own\">\n<h2 id=\"" + id + "\">");
        html.append(HtmlWords.escape(part.title())).append("</h2>\n");
        text(part.text(), html);
        html.append(pictures(part.pictures())).append("</section>\n");
        return html.toString();
    }

    /** A figure for each picture. It is loaded when it comes into sight, and keeps its room until then. */
    static String pictures(List<OwnParts.Picture> pictures) {
        StringBuilder html = new StringBuilder();
        for (OwnParts.Picture picture : pictures) {
            html.append("<figure>\n<img src=\"")
                    .append(picture.source())
                    .append("\" alt=\"")
                    .append(attribute(picture.alternative()))
                    .append("\" width=\"")
                    .append(picture.width())
                    .append("\" height=\"")
                    .append(picture.height())
                    .append("\" loading=\"lazy\">\n");
            if (!picture.caption().isEmpty()) {
                html.append("<figcaption>")
                        .append(HtmlWords.escape(picture.caption()))
                        .append("</figcaption>\n");
            }
            html.append("</figure>\n");
        }
        return html.toString();
    }

    /** The imprint at the foot of the page. */
    static String imprint(List<OwnParts.Line> imprint) {
        if (imprint.isEmpty()) {
            return "";
        }
        StringBuilder html = new StringBuilder("<footer class=\"own\">\n<dl>\n");
        for (OwnParts.Line line : imprint) {
            html.append("<div><dt>").append(HtmlWords.escape(line.label())).append("</dt><dd>\n");
            text(line.text(), html);
            html.append("</dd></div>\n");
        }
        return html.append("</dl>\n</footer>\n").toString();
    }

    private static void text(OwnText text, StringBuilder html) {
        for (OwnText.Block block : text.blocks()) {
            if (block instanceof OwnText.Paragraph paragraph) {
                html.append("<p>");
                paragraph.spans().forEach(span -> span(span, html));
                html.append("</p>\n");
            } else {
                items((OwnText.Items) block, html);
            }
        }
    }

    private static void items(OwnText.Items items, StringBuilder html) {
        String name = items.first().isPresent() ? "ol" : "ul";
        String start = items.first()
                .filter(first -> first != 1)
                .map(first -> " start=\"" + first + "\"")
                .orElse("");
        html.append("<").append(name).append(start).append(">\n");
        for (OwnText item : items.items()) {
            html.append("<li>\n");
            text(item, html);
            html.append("</li>\n");
        }
        html.append("</").append(name).append(">\n");
    }

    private static void span(OwnText.Span span, StringBuilder html) {
        String name = switch (span.stress()) {
            case NONE -> "";
            case EMPHASIS -> "em";
            case STRONG -> "strong";
        };
        span.link()
                .ifPresent(link ->
                        html.append("<a href=\"").append(attribute(link)).append("\">"));
        html.append(name.isEmpty() ? "" : "<" + name + ">")
                .append(HtmlWords.escape(span.text()))
                .append(name.isEmpty() ? "" : "</" + name + ">")
                .append(span.link().isPresent() ? "</a>" : "");
    }

    private static String attribute(String words) {
        return HtmlWords.escape(words).replace("\"", "&quot;");
    }
}
