package edgewright.desk.output;

import edgewright.draw.marks.Drawing;
import edgewright.draw.raster.RasterPicture;
import edgewright.draw.svg.SvgPicture;
import edgewright.file.SafeFile;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/** Writes drawings as files, each whole or not at all. */
final class PictureFiles {
    private PictureFiles() {}

    /**
     * Writes a drawing in the place of the file with this name.
     *
     * @param drawing made when it is asked for
     * @param dotsPerInch for pictures in pixels
     * @param cancelled asked before each mark of the picture and before it is written
     * @return whether it was written; false if it was cancelled before
     */
    static boolean write(
            Supplier<Drawing> drawing,
            PictureDialog.Kind kind,
            double dotsPerInch,
            Path file,
            BooleanSupplier cancelled)
            throws IOException {
        ByteArrayOutputStream picture = new ByteArrayOutputStream();
        try {
            switch (kind) {
                case SVG ->
                    picture.writeBytes(SvgPicture.of(drawing.get(), cancelled).getBytes(StandardCharsets.UTF_8));
                case PNG -> RasterPicture.writePng(drawing.get(), dotsPerInch, picture, cancelled);
            }
        } catch (CancellationException stopped) {
            return false;
        }
        if (cancelled.getAsBoolean()) {
            return false;
        }
        SafeFile.write(file, picture::writeTo);
        return true;
    }
}
