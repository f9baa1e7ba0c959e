package edgewright.desk;

import edgewright.draw.Drawing;
import edgewright.draw.RasterPicture;
import edgewright.draw.SvgPicture;
import edgewright.file.SafeFile;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.function.BooleanSupplier;

/** Writes drawings as files, each whole or not at all. */
final class PictureFiles {
    private PictureFiles() {}

    /**
     * Writes a drawing in the place of the file with this name.
     *
     * @param dotsPerInch for pictures in pixels
     * @param cancelled asked when the picture is made and before it is written
     * @return whether it was written; false if it was cancelled before
     */
    static boolean write(
            Drawing drawing, PictureDialog.Kind kind, double dotsPerInch, Path file, BooleanSupplier cancelled)
            throws IOException {
        ByteArrayOutputStream picture = new ByteArrayOutputStream();
        switch (kind) {
            case SVG -> picture.writeBytes(SvgPicture.of(drawing).getBytes(StandardCharsets.UTF_8));
            case PNG -> RasterPicture.writePng(drawing, dotsPerInch, picture);
        }
        if (cancelled.getAsBoolean()) {
            return false;
        }
        SafeFile.write(file, picture::writeTo);
        return true;
    }
}
