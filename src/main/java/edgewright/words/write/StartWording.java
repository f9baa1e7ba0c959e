package edgewright.words.write;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.number;
import static edgewright.texts.Arg.plain;

import edgewright.texts.Language;
import edgewright.texts.Messages;
import edgewright.words.page.TextBlock;
import edgewright.words.tree.StartMarker;
import edgewright.words.tree.StartMarkers;
import edgewright.words.tree.WrittenRound;
import edgewright.words.tree.WrittenStart;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is said of the markers above which rounds start, and of each round that does not start right above its own. */
final class StartWording {
    private final Messages says;
    private final Messages phrases;
    private final Optional<StartMarkers> markers;

    /** @param markers those of the pattern; nothing is said of a pattern that has none */
    StartWording(Language language, Optional<StartMarkers> markers) {
        this.says = language.messages("words/write");
        this.phrases = language.messages("words/phrases");
        this.markers = markers;
    }

    /** Where the markers are put, a paragraph each, and how. */
    List<TextBlock> setUp() {
        List<TextBlock> blocks = new ArrayList<>();
        markers.ifPresent(each -> {
            if (each.isOne()) {
                blocks.add(marker(phrases.text("marker-all"), each.odd()));
            } else {
                blocks.add(marker(phrases.text("marker-odd"), each.odd()));
                blocks.add(marker(phrases.text("marker-even"), each.even()));
            }
            blocks.add(new TextBlock.Prose(says.text("setUp-markers", plain("markers", each.isOne() ? 1 : 2))));
        });
        return blocks;
    }

    private TextBlock marker(String title, StartMarker marker) {
        int round = markers.orElseThrow().round();
        return new TextBlock.Prose(phrases.text(
                "marker",
                arg("title", title),
                arg("edge", phrases.text("edge-" + marker.side())),
                number("number", marker.stitch()),
                arg("round", round == 0 ? phrases.text("of-base") : phrases.text("of-round", number("round", round)))));
    }

    /** What a round says of its start; nothing if it starts right above its marker, or if there are none. */
    String of(WrittenRound round) {
        if (markers.isEmpty()) {
            return "";
        }
        return round.start().map(start -> movedOn(round, start)).orElseGet(() -> phrases.text("at-a-corner"));
    }

    private String movedOn(WrittenRound round, WrittenStart start) {
        int stitches = start.stitch() - markers.orElseThrow().joins(round.number());
        return stitches == 0
                ? ""
                : phrases.text("start-after", arg("sts", phrases.text("sts", plain("sts", stitches))));
    }

    /** Where a round starts, for a page that tells one round by itself; nothing if there are no markers. */
    String toldApart(WrittenRound round) {
        if (markers.isEmpty()) {
            return "";
        }
        return round.start().map(start -> toldApart(round, start)).orElseGet(() -> phrases.text("at-a-corner"));
    }

    private String toldApart(WrittenRound round, WrittenStart start) {
        int stitches = start.stitch() - markers.orElseThrow().joins(round.number());
        var edge = arg("edge", phrases.text("edge-" + start.side()));
        var number = number("number", start.stitch());
        return stitches == 0
                ? says.text("start-above", edge, number)
                : says.text("start-past", edge, number, arg("sts", phrases.text("sts", plain("sts", stitches))));
    }
}
