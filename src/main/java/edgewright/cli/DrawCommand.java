package edgewright.cli;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;
import static edgewright.texts.Arg.decimal;
import static edgewright.texts.Arg.shortest;

import edgewright.chart.Chart;
import edgewright.chart.HookHand;
import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.draw.grid.Rotation;
import edgewright.draw.marks.Drawing;
import edgewright.draw.marks.Emphasis;
import edgewright.draw.marks.MarkStyle;
import edgewright.draw.paint.ColourMode;
import edgewright.draw.paint.Palette;
import edgewright.draw.picture.ChartPicture;
import edgewright.draw.picture.DraftFindings;
import edgewright.draw.picture.FabricFill;
import edgewright.draw.picture.PictureStyle;
import edgewright.draw.picture.UnprintedText;
import edgewright.draw.raster.RasterPicture;
import edgewright.draw.shop.ShopPicture;
import edgewright.draw.shop.ShopSize;
import edgewright.draw.side.SidePicture;
import edgewright.draw.svg.SvgPicture;
import edgewright.texts.Messages;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** {@code draw}: the chart as a picture. */
@Command(name = "draw", mixinStandardHelpOptions = true)
final class DrawCommand implements Callable<Integer> {
    private static final String SVG = ".svg";
    private static final String PNG = ".png";

    /** How often the repeat is worked on each side of a whole border when nobody says. */
    private static final int USUAL_REPEATS = 3;

    @ParentCommand
    private RootCommand root;

    @Spec
    private CommandSpec spec;

    @Mixin
    private ChartArgument argument;

    @Mixin
    private SizeOption size;

    @Option(names = "--to", required = true, paramLabel = "FILE", converter = PathConverter.class)
    private Path to;

    @Option(names = "--layer", paramLabel = "LAYER", defaultValue = "both")
    private LayerChoice layer;

    @Option(names = "--view", paramLabel = "VIEW", defaultValue = "corner")
    private View view;

    @Option(names = "--turn", paramLabel = "DEGREES", defaultValue = "0", converter = RotationConverter.class)
    private Rotation turn;

    @Option(names = "--inking", paramLabel = "colour|black", defaultValue = "colour")
    private ColourMode inking;

    @Option(names = "--marks", paramLabel = "stems|squares")
    private MarkStyle marks = MarkStyle.USUAL;

    @Option(names = "--hand", paramLabel = "right|left", defaultValue = "right")
    private HookHand hand;

    @Option(names = "--size", paramLabel = "cover|square|portrait|wide")
    private ShopSize shopSize;

    @Option(names = "--title", negatable = true, defaultValue = "true", fallbackValue = "true")
    private boolean titled;

    @Option(names = "--cell-mm", paramLabel = "MM", defaultValue = "5", converter = NumberConverter.OfCellMm.class)
    private double cellMm;

    @Option(names = "--dpi", paramLabel = "DPI", defaultValue = "150", converter = NumberConverter.OfDpi.class)
    private double dpi;

    /** What is drawn in the cells. */
    enum LayerChoice {
        FABRIC,
        MARKS,
        BOTH
    }

    /** What of the border is drawn. */
    enum View {
        CORNER,
        SIDE,
        BORDER
    }

    @Override
    public Integer call() {
        refuseWhatWouldBeIgnored();
        Terminal terminal = root.terminal();
        Optional<ChartArgument.Judged> judged = argument.judged(size, terminal);
        if (judged.isEmpty()) {
            return ExitStatus.NO;
        }
        OutputFile output = new OutputFile(to, judged.get().file(), List.of(SVG, PNG), terminal);
        unprinted(judged.get().chart()).forEach(text -> terminal.complain(text.sentence(terminal.language())));
        Drawing drawing = drawing(judged.get());
        if (output.hasEnding(SVG)) {
            output.write(out -> out.write(SvgPicture.of(drawing).getBytes(StandardCharsets.UTF_8)));
        } else {
            requireRoom(drawing);
            output.write(out -> RasterPicture.writePng(drawing, dotsPerInch(), out));
        }
        terminal.sayWritten(says().text(
                        "draw-done",
                        arg("file", ScreenText.name(output.path())),
                        decimal("widthMm", drawing.widthMm(), 0),
                        decimal("heightMm", drawing.heightMm(), 0)));
        return ExitStatus.DONE;
    }

    /** The texts of the picture that no typeface can print; a picture of the border has none but for a shop. */
    private List<UnprintedText> unprinted(Chart chart) {
        if (view != View.BORDER) {
            return UnprintedText.inPicture(chart, true);
        }
        return shopSize == null || !titled
                ? List.of()
                : Stream.concat(
                                UnprintedText.of(UnprintedText.Where.TITLE, chart.title()),
                                UnprintedText.of(UnprintedText.Where.DESIGNER, chart.designer()))
                        .toList();
    }

    private double dotsPerInch() {
        return shopSize == null ? dpi : ShopSize.DPI;
    }

    /** An option that changes nothing in the picture asked for is a mistake of whoever gives it. */
    private void refuseWhatWouldBeIgnored() {
        if (view != View.BORDER) {
            refuse("--sides", says().text("draw-forBorder", arg("option", "--sides")));
            refuse("--repeats", says().text("draw-forBorder", arg("option", "--repeats")));
        }
        if (view != View.CORNER) {
            refuse("--turn", says().text("draw-forCorner", arg("option", "--turn")));
        }
        if (shopSize == null) {
            refuse("--title", says().text("draw-forShop", arg("option", titled ? "--title" : "--no-title")));
        } else {
            if (view != View.BORDER || layer != LayerChoice.FABRIC) {
                refuse("--size", says().text("draw-shopShows", arg("option", "--size")));
            }
            for (String option : List.of("--dpi", "--cell-mm", "--draft")) {
                refuse(option, says().text("draw-notForShop", arg("option", option)));
            }
        }
        if (isSvg()) {
            refuse("--dpi", says().text("draw-forPixels", arg("option", "--dpi"), arg("file", ScreenText.name(to))));
        }
    }

    private void refuse(String option, String why) {
        if (spec.commandLine().getParseResult().hasMatchedOption(option)) {
            throw new ParameterException(spec.commandLine(), why);
        }
    }

    private Drawing drawing(ChartArgument.Judged judged) {
        Chart chart = judged.chart();
        PictureStyle style = style();
        Emphasis emphasis = Emphasis.of(judged.verdict().findings());
        Drawing drawing;
        if (view == View.CORNER) {
            requireFew(ChartPicture.stitchesOfCorner(chart, style));
            drawing = ChartPicture.corner(chart, style, emphasis);
        } else if (view == View.SIDE) {
            requireFew(SidePicture.stitches(chart));
            drawing = SidePicture.of(chart, Side.FIRST, style, emphasis).drawing();
        } else {
            PerSide<Integer> repeats = judged.repeats().orElseGet(() -> usualRepeats(chart));
            if (!repeats.oppositeSidesAreAlike()) {
                throw new BadInput(says().text("draw-oblong"));
            }
            requireFew(ChartPicture.stitchesOfBorder(chart, repeats));
            drawing = shopSize == null
                    ? ChartPicture.wholeBorder(chart, repeats, style)
                    : ShopPicture.of(chart, repeats, shopSize, titled, style);
        }
        return judged.isDraft() ? DraftFindings.under(drawing, judged.verdict(), style) : drawing;
    }

    private PerSide<Integer> usualRepeats(Chart chart) {
        return shopSize == null ? PerSide.all(USUAL_REPEATS) : ShopPicture.repeatsFor(chart, shopSize);
    }

    private PictureStyle style() {
        PictureStyle print = PictureStyle.print(root.terminal().language());
        PictureStyle style = switch (layer) {
            case FABRIC ->
                print.withMarks(false)
                        .withGrid(false)
                        .withLook(FabricFill.ofDots(cellMm, isSvg() ? FabricFill.SCREEN_DPI : dpi));
            case MARKS -> print.withFabric(false);
            case BOTH -> print;
        };
        PictureStyle inked =
                inking == ColourMode.BLACK ? style.withInking(ColourMode.BLACK).withPalette(Palette.BLACK) : style;
        return inked.withMarkStyle(marks).withCellMm(cellMm).withRotation(turn).withHand(hand);
    }

    private boolean isSvg() {
        return String.valueOf(to.getFileName()).toLowerCase(Locale.ROOT).endsWith(SVG);
    }

    private void requireFew(long stitches) {
        if (stitches > ChartPicture.MOST_STITCHES) {
            throw new BadInput(says().text(
                            "draw-stitches", count("stitches", stitches), count("most", ChartPicture.MOST_STITCHES)));
        }
    }

    private void requireRoom(Drawing drawing) {
        double pixels = RasterPicture.pixels(drawing.widthMm(), drawing.heightMm(), dotsPerInch());
        if (pixels > RasterPicture.MOST_PIXELS) {
            throw new BadInput(says().text(
                            "draw-pixels",
                            decimal("millions", pixels / 1e6, 1),
                            shortest("most", RasterPicture.MOST_PIXELS / 1e6, 1)));
        }
    }

    private Messages says() {
        return root.terminal().says();
    }
}
