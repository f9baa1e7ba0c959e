package edgewright.cli;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.commas;
import static edgewright.texts.Arg.count;
import static edgewright.texts.Arg.or;

import edgewright.assist.picture.Miss;
import edgewright.assist.picture.PictureAnswer.Stitched;
import edgewright.assist.picture.PictureSentences;
import edgewright.assist.picture.PictureStitcher;
import edgewright.assist.picture.PictureTask;
import edgewright.assist.picture.PictureText;
import edgewright.assist.picture.PictureYarns;
import edgewright.assist.picture.WantedPicture;
import edgewright.assist.picture.YarnOrder;
import edgewright.chart.Chart;
import edgewright.chart.Corner;
import edgewright.chart.Heading;
import edgewright.chart.Rules;
import edgewright.chart.Yarn;
import edgewright.texts.Messages;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** {@code from-picture}: the chart whose fabric comes nearest to a picture of one repeat. */
@Command(name = "from-picture", mixinStandardHelpOptions = true)
final class FromPictureCommand implements Callable<Integer> {
    /** The yarns of whoever names none. */
    private static final List<String> USUAL = List.of("A", "B");

    /** So many misses are said; whoever has more begins with these, or asks for JSON. */
    private static final int MOST_SAID = 20;

    @ParentCommand
    private RootCommand root;

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "PICTURE", descriptionKey = "PICTURE", converter = PathConverter.class)
    private Path file;

    @Option(names = "--to", required = true, paramLabel = "CHART", converter = PathConverter.class)
    private Path to;

    @Option(names = "--yarns", paramLabel = "A,B,A,...|find")
    private String yarns;

    @Option(names = "--like", paramLabel = "CHART", converter = PathConverter.class)
    private Path like;

    @Option(names = "--stack")
    private boolean stack;

    @Option(names = "--no-loose-runs")
    private boolean noLooseRuns;

    @Option(names = "--first", paramLabel = "left|right", defaultValue = "left")
    private FirstStitch first;

    @Option(names = "--from-corner", paramLabel = "N", defaultValue = "0")
    private int fromCorner;

    @Option(names = "--to-corner", paramLabel = "N", defaultValue = "0")
    private int toCorner;

    @Mixin
    private PixelOption pixels;

    @Option(names = "--json")
    private boolean json;

    /** At which end of its lines a picture has the first stitch of a round. */
    enum FirstStitch {
        LEFT,
        RIGHT
    }

    /** The JSON document. */
    private record Answer(int rounds, int repeat, int misses, List<Missed> missed) {}

    private record Missed(int round, int place, String wanted, String shows) {}

    /** What is taken from another chart, or is usual. */
    private record Ground(Heading heading, Corner corner, Rules rules, List<Yarn> yarns) {}

    @Override
    public Integer call() {
        WholeNumberConverter.requireBetween(fromCorner, "--from-corner", 0, Chart.MOST_STITCHES - 1, spec, says());
        WholeNumberConverter.requireBetween(toCorner, "--to-corner", 0, Chart.MOST_STITCHES - 1, spec, says());
        OutputFile output = OutputFile.ofChart(to, like == null ? List.of(file) : List.of(file, like), root.terminal());
        PictureInput input = PictureInput.of(file, root.terminal());
        Optional<RoundYarns> asked = Optional.ofNullable(yarns).map(text -> RoundYarns.parse(text, says()));
        Ground ground = ground(input, asked);
        WantedPicture read = input.wanted(ground.yarns(), pixels.reduction(file, input.isPixels(), says()));
        WantedPicture picture = first == FirstStitch.RIGHT ? read.reversed() : read;
        List<String> order = order(picture, asked.orElseGet(() -> RoundYarns.inTurn(usual(ground.yarns()))), ground);
        PictureTask task = new PictureTask(picture, order, ground.rules());
        // No stitch is locked, so there is always an answer.
        Stitched answer = (Stitched)
                (noLooseRuns ? PictureStitcher.withoutLooseRuns(task, () -> false) : PictureStitcher.nearest(task));
        output.write(
                answer.chart(ground.heading(), ground.corner(), ground.rules(), ground.yarns(), fromCorner, toCorner));
        print(answer, asked.isPresent() && asked.get().isToBeFound());
        return ExitStatus.DONE;
    }

    private Ground ground(PictureInput input, Optional<RoundYarns> asked) {
        if (like != null) {
            Chart chart = ChartInput.read(like, root.terminal());
            asked.ifPresent(order -> requireThere(order.ids(), chart.yarns()));
            Rules rules = stack ? chart.rules().withStackLongStitches(true) : chart.rules();
            return new Ground(chart.heading().withTitle(title()).withNotes(""), chart.corner(), rules, chart.yarns());
        }
        Collection<String> ids = USUAL;
        if (asked.isPresent()) {
            boolean fromLetters = asked.get().isToBeFound() && !input.isPixels();
            Set<String> named = new TreeSet<>(
                    fromLetters
                            ? PictureText.yarns(input.letters())
                            : asked.get().ids());
            ids = named.isEmpty() ? USUAL : named;
        }
        if (ids.size() > Chart.MOST_YARNS) {
            throw new BadInput(
                    says().text("picture-manyYarns", count("yarns", ids.size()), count("most", Chart.MOST_YARNS)));
        }
        return new Ground(
                Heading.of(title()), Corner.DEFAULT, Rules.DEFAULT.withStackLongStitches(stack), PictureYarns.of(ids));
    }

    /** The name of the picture without its ending. */
    private String title() {
        return file.getFileName().toString().replaceFirst("(?<=.)\\.[^.]*$", "");
    }

    private void requireThere(List<String> asked, List<Yarn> there) {
        List<String> ids = there.stream().map(Yarn::id).toList();
        for (String id : asked) {
            if (!ids.contains(id)) {
                throw new BadInput(says().text(
                                "picture-noYarn",
                                arg("found", id),
                                arg("file", ScreenText.name(like)),
                                or("yarns", ids)));
            }
        }
    }

    private static List<String> usual(List<Yarn> there) {
        List<String> ids = there.stream().map(Yarn::id).toList();
        return ids.containsAll(USUAL) ? USUAL : ids.subList(0, Math.min(2, ids.size()));
    }

    private List<String> order(WantedPicture picture, RoundYarns asked, Ground ground) {
        if (!asked.isToBeFound()) {
            return asked.forRounds(picture.rounds(), says());
        }
        Set<String> wanted = picture.yarns();
        List<String> choice = wanted.isEmpty() ? usual(ground.yarns()) : List.copyOf(wanted);
        if (choice.size() > YarnOrder.MOST_YARNS) {
            throw new BadInput(says().text(
                            "picture-findYarns", count("yarns", choice.size()), count("most", YarnOrder.MOST_YARNS)));
        }
        return YarnOrder.best(picture, choice, ground.rules(), () -> false).orElseThrow();
    }

    private void print(Stitched answer, boolean found) {
        int repeat = answer.rounds().get(0).length();
        List<Miss> misses = answer.misses();
        if (json) {
            List<Missed> missed = misses.stream()
                    .map(miss -> new Missed(miss.place().round(), miss.place().place(), miss.wanted(), miss.shows()))
                    .toList();
            JsonAnswer.print(
                    new Answer(answer.rounds().size(), repeat, misses.size(), missed),
                    root.terminal().out());
            return;
        }
        Terminal terminal = root.terminal();
        terminal.sayWritten(says().text(
                        "picture-done",
                        arg("file", ScreenText.name(to)),
                        count("rounds", answer.rounds().size()),
                        count("stitches", repeat),
                        count("misses", misses.size())));
        if (found) {
            terminal.say(says().text("picture-order", commas("yarns", answer.yarns())));
        }
        PictureSentences sentences = new PictureSentences(terminal.language());
        misses.stream().limit(MOST_SAID).map(sentences::of).forEach(terminal::say);
        if (misses.size() > MOST_SAID) {
            terminal.say(says().text("picture-more", count("misses", misses.size() - MOST_SAID)));
        }
        if (!misses.isEmpty()) {
            terminal.say(says().text(answer.least() ? "picture-fewest" : "picture-notProved"));
        }
    }

    private Messages says() {
        return root.terminal().says();
    }
}
