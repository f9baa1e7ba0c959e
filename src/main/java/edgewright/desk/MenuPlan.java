package edgewright.desk;

import edgewright.chart.Counting;
import edgewright.desk.panes.ToolTray;
import edgewright.desk.tool.Mirror;
import edgewright.desk.tool.Tools;
import edgewright.desk.work.ChartView;
import edgewright.desk.work.Seeing;
import edgewright.desk.work.Theme;
import edgewright.desk.work.TypeSize;
import edgewright.draw.paint.ColourVision;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Where each command stands in the menus: the one plan from which the menu bar is built, and by which the search of commands
 * says where a command is found.
 *
 * @param id of the menu; its name is {@code menu-<id>}
 * @param lines what stands in it, from above
 */
record MenuPlan(String id, List<MenuPlan.Line> lines) {
    /** A line of a menu. */
    sealed interface Line {}

    /** A command, by its id. */
    record Does(String command) implements Line {}

    /** A line between groups. */
    record Between() implements Line {}

    /** A menu in the menu. */
    record Inner(MenuPlan menu) implements Line {}

    /** A menu in the menu whose lines are made as it opens. */
    record Filled(String id) implements Line {}

    static final String RECENT = "recent";
    static final String SHELF = "shelf";
    static final String YARN_OF_ROUNDS = "yarnOfRounds";

    /** The menu bar. */
    static final List<MenuPlan> BAR = List.of(
            menu(
                    "file",
                    "new open readText startPage",
                    new Filled(RECENT),
                    "- save saveAs closeChart - prove publish print picture saveWords openMade showMade - properties making ownPages - quit"),
            menu(
                    "edit",
                    "undo redo - cut copy paste pasteReversed unmark",
                    new Inner(menu(
                            "cursor",
                            "go.left go.right go.up go.down go.first go.last -"
                                    + " mark.left mark.right mark.up mark.down")),
                    "- nextFinding previousFinding remedy.1 remedy.2 remedy.3 remedyForAll - evenOut"),
            menu(
                    "stitch",
                    family("choose", ToolTray.ORDER.stream().map(stitch -> String.valueOf(stitch.letter()))),
                    "-",
                    family("work", ToolTray.ORDER.stream().map(stitch -> String.valueOf(stitch.letter()))),
                    "workHere - takeOut takeOutBack pick"),
            menu(
                    "draw",
                    family("tool", Stream.of(Tools.values()).map(Tools::id)),
                    "toolDown -",
                    family("mirror", Stream.of(Mirror.values()).map(Mirror::id))),
            menu(
                    "motif",
                    "motifLift motifFlipAlong motifFlipOutwards motifOtherArmMirrored motifOtherArmRotated"
                            + " motifRepeatAlong - pasteGrowing -",
                    new Filled(SHELF)),
            menu(
                    "rounds",
                    "insertOutside insertInside duplicateRounds - moveOut moveIn - deleteRounds -",
                    new Filled(YARN_OF_ROUNDS),
                    "letters startHere - addYarn changeYarn removeYarn - amounts"),
            menu("side", "insertColumn deleteColumn - side - shiftOn shiftBack shift - reverse"),
            menu("piece", "fitPiece guide -", names("counting", Counting.values())),
            menu(
                    "view",
                    names("layers", ChartView.Layers.values()),
                    "-",
                    names("drawn", Seeing.Drawn.values()),
                    "scene - leftHand",
                    new Inner(menu("vision", names("vision", ColourVision.values()))),
                    new Inner(menu("panes", "fold.findings fold.words fold.side fold.yarns fold.all")),
                    "- turn - zoomIn zoomOut fit - nextPane previousPane nextChart previousChart -",
                    new Inner(menu("theme", names("theme", Theme.values()))),
                    new Inner(menu("typeSize", names("typeSize", TypeSize.values())))),
            menu("help", "findCommand - help laws keys - about"));

    /** The menus that lead to a command, the outermost first; empty if it stands in none. */
    static Optional<List<String>> pathTo(String command) {
        return BAR.stream().flatMap(menu -> menu.path(command).stream()).findFirst();
    }

    private Optional<List<String>> path(String command) {
        for (Line line : lines) {
            if (line.equals(new Does(command))) {
                return Optional.of(List.of(id));
            }
            if (line instanceof Inner inner) {
                Optional<List<String>> within = inner.menu().path(command);
                if (within.isPresent()) {
                    return Optional.of(
                            Stream.concat(Stream.of(id), within.get().stream()).toList());
                }
            }
        }
        return Optional.empty();
    }

    /** The ids of all commands in it. */
    Stream<String> commands() {
        return lines.stream().flatMap(line -> {
            if (line instanceof Does does) {
                return Stream.of(does.command());
            }
            return line instanceof Inner inner ? inner.menu().commands() : Stream.of();
        });
    }

    /** A menu of lines, and of texts that have ids of commands between blanks; a hyphen is a line between groups. */
    private static MenuPlan menu(String id, Object... lines) {
        return new MenuPlan(
                id,
                Stream.of(lines)
                        .flatMap(line -> line instanceof String ids
                                ? Stream.of(ids.split(" ")).map(MenuPlan::line)
                                : Stream.of((Line) line))
                        .toList());
    }

    private static Line line(String id) {
        return id.equals("-") ? new Between() : new Does(id);
    }

    private static String names(String family, Enum<?>... constants) {
        return family(family, Stream.of(constants).map(Enum::name));
    }

    private static String family(String family, Stream<String> members) {
        return String.join(" ", members.map(member -> family + "." + member).toList());
    }
}
