package edgewright.booklet.own;

import edgewright.chart.Colour;
import edgewright.chart.Imprint;
import edgewright.chart.OwnMatter;
import edgewright.chart.Photo;
import edgewright.file.ImprintFiles;
import edgewright.yarn.Contrast;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads the files that a chart names, all of them before anything is printed. */
public final class OwnFiles {
    /**
     * What an accent must come to on white. Source: WCAG 2.2, success criterion 1.4.3,
     * https://www.w3.org/TR/WCAG22/#contrast-minimum
     */
    public static final double LEAST_CONTRAST = 4.5;

    private static final Colour PAPER = Colour.parse("#ffffff");

    /** What came of reading. */
    public sealed interface Result {}

    /** All is there. */
    public record Read(PrintedMatter matter) implements Result {}

    /** The first that is wrong. */
    public record Refused(OwnFault fault) implements Result {}

    private OwnFiles() {}

    /** Ends the reading. Never leaves this class. */
    private static final class Refusal extends Exception {
        private static final long serialVersionUID = 1;

        private final transient OwnFault fault;

        Refusal(OwnFault fault) {
            super(fault.getClass().getSimpleName(), null, false, false);
            this.fault = fault;
        }
    }

    /**
     * Reads the photographs and the imprint of a chart.
     *
     * @param chart the file that the chart lies in; names are relative to its folder
     * @param imprint an imprint file to be taken instead of that which the chart names
     */
    public static Result read(OwnMatter own, Path chart, Optional<Path> imprint) {
        try {
            Optional<Path> file = imprint.isPresent() ? imprint : imprintOf(own, chart);
            Optional<PrintedImprint> printed = file.isPresent() ? Optional.of(imprint(file.get())) : Optional.empty();
            return new Read(new PrintedMatter(photos(own.photos(), chart), printed));
        } catch (Refusal refusal) {
            return new Refused(refusal.fault);
        }
    }

    /** The contrast of an accent on white paper, after WCAG 2.2: from 1 to 21. */
    public static double contrast(Colour accent) {
        return Contrast.between(accent, PAPER).ratio();
    }

    private static List<PrintedPhoto> photos(List<Photo> photos, Path chart) throws Refusal {
        List<PrintedPhoto> printed = new ArrayList<>();
        for (int i = 0; i < photos.size(); i++) {
            Photo photo = photos.get(i);
            try {
                printed.add(new PrintedPhoto(photo, Photograph.read(folder(chart), photo.file())));
            } catch (UnprintableException e) {
                throw new Refusal(new OwnFault.OfPhoto(chart, i, photo.file(), e.fault()));
            }
        }
        return printed;
    }

    private static Optional<Path> imprintOf(OwnMatter own, Path chart) throws Refusal {
        if (own.imprint().isEmpty()) {
            return Optional.empty();
        }
        String name = own.imprint().get();
        try {
            PictureFile.find(folder(chart), name);
            // By the name that people know, not by that at the end of all links.
            return Optional.of(chart.resolveSibling(name));
        } catch (UnprintableException e) {
            throw new Refusal(new OwnFault.OfImprintName(chart, name, e.fault()));
        }
    }

    private static PrintedImprint imprint(Path file) throws Refusal {
        ImprintFiles.Result result = ImprintFiles.read(file);
        if (result instanceof ImprintFiles.Problems refused) {
            throw new Refusal(new OwnFault.OfImprint(file, refused.problems().get(0)));
        }
        Imprint imprint = ((ImprintFiles.Read) result).imprint();
        if (imprint.accent().isPresent()) {
            Colour accent = imprint.accent().get();
            double ratio = contrast(accent);
            if (ratio < LEAST_CONTRAST) {
                throw new Refusal(new OwnFault.PaleAccent(file, accent, ratio));
            }
        }
        if (imprint.logo().isBlank()) {
            return new PrintedImprint(imprint, Optional.empty());
        }
        try {
            return new PrintedImprint(imprint, Optional.of(Photograph.read(folder(file), imprint.logo())));
        } catch (UnprintableException e) {
            throw new Refusal(new OwnFault.OfLogo(file, imprint.logo(), e.fault()));
        }
    }

    private static Path folder(Path file) {
        return file.toAbsolutePath().getParent();
    }
}
