package edgewright.cli;

import static edgewright.texts.Arg.arg;

import edgewright.assist.picture.PictureFault;
import edgewright.assist.picture.PictureReading;
import edgewright.assist.picture.PictureSentences;
import edgewright.assist.picture.PictureText;
import edgewright.assist.picture.PixelReduction;
import edgewright.assist.picture.Pixels;
import edgewright.assist.picture.WantedPicture;
import edgewright.chart.Yarn;
import edgewright.draw.raster.PngInput;
import edgewright.file.FileProblemException;
import edgewright.file.TextFile;
import edgewright.file.fault.ProblemSentences;
import java.nio.file.Path;
import java.util.List;

/**
 * A file with a picture of one repeat: letters, or pixels.
 *
 * @param bytes all of the file
 */
@SuppressWarnings("ArrayRecordComponent") // the bytes are read once and never compared
record PictureInput(Path file, byte[] bytes, Terminal terminal) {

    /** @throws BadInput if the file cannot be read */
    static PictureInput of(Path file, Terminal terminal) {
        try {
            return new PictureInput(file, TextFile.bytes(file), terminal);
        } catch (FileProblemException e) {
            throw new BadInput(new ProblemSentences(terminal.language()).of(file, e.problem()));
        }
    }

    boolean isPixels() {
        return PngInput.isPng(bytes);
    }

    /** The letters of the file. */
    String letters() {
        try {
            return TextFile.text(bytes);
        } catch (FileProblemException e) {
            throw new BadInput(terminal.says().text("picture-noPicture", arg("file", ScreenText.name(file))));
        }
    }

    /**
     * What is wanted, by yarns that there are.
     *
     * @throws BadInput if it is no picture of one repeat
     */
    WantedPicture wanted(List<Yarn> yarns, PixelReduction reduction) {
        PictureReading reading = isPixels()
                ? reduction.read(pixels(), yarns)
                : PictureText.read(letters(), yarns.stream().map(Yarn::id).toList());
        if (reading instanceof PictureReading.Read read) {
            return read.picture();
        }
        throw refused(((PictureReading.Refused) reading).fault());
    }

    private Pixels pixels() {
        PngInput.Result result = PngInput.read(bytes);
        if (result instanceof PngInput.TooLarge large) {
            throw refused(new PictureFault.TooManyPixels(large.pixels(), PngInput.MOST_PIXELS));
        }
        if (result instanceof PngInput.Picture picture) {
            return new Pixels(picture.width(), picture.height(), picture.argb());
        }
        throw new BadInput(terminal.says().text("picture-broken", arg("file", ScreenText.name(file))));
    }

    private BadInput refused(PictureFault fault) {
        String line = new PictureSentences(terminal.language()).of(fault);
        return new BadInput(
                terminal.says().text("made-refused", arg("file", ScreenText.name(file)), arg("mistake", line)));
    }
}
