package edgewright.assist.picture;

import edgewright.assist.picture.PictureReading.Read;
import edgewright.assist.picture.PictureReading.Refused;
import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.Yarn;
import edgewright.yarn.Contrast;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * How a picture in pixels becomes one of yarns: a part is cut out and divided evenly into stitches and rounds; each cell has the
 * mean colour of its pixels, mixed as light mixes, and wants the yarn whose colour is nearest after CIEDE2000. A cell that is
 * mostly transparent wants none.
 *
 * @param crop the part to look at; empty for all
 * @param stitches the stitches of a round; empty to follow from the rounds, cells being square
 * @param rounds likewise; if both are empty each pixel is a cell
 * @param threshold a cell whose colour differs more than this from every yarn wants none; empty if each wants one
 */
public record PixelReduction(Optional<Crop> crop, OptionalInt stitches, OptionalInt rounds, OptionalDouble threshold) {
    /** All of the picture, a cell a pixel. */
    public static final PixelReduction NONE =
            new PixelReduction(Optional.empty(), OptionalInt.empty(), OptionalInt.empty(), OptionalDouble.empty());

    /** Below this share of its area a cell is transparent. */
    private static final double LEAST_OPAQUE = 0.5;

    /** A part of a picture in pixels; the top left pixel is 0, 0. */
    public record Crop(int left, int top, int width, int height) {
        boolean liesIn(Pixels pixels) {
            return left >= 0
                    && top >= 0
                    && width >= 1
                    && height >= 1
                    && width <= pixels.width() - left
                    && height <= pixels.height() - top;
        }
    }

    /** The picture that comes of these pixels and yarns, of which there is at least one. The outermost round is at the top. */
    public PictureReading read(Pixels pixels, List<Yarn> yarns) {
        Crop part = crop.orElse(new Crop(0, 0, pixels.width(), pixels.height()));
        if (!part.liesIn(pixels)) {
            return new Refused(new PictureFault.CropOutside(pixels.width(), pixels.height()));
        }
        int w = stitches.orElse(
                rounds.isPresent() ? scaled(part.width(), rounds.getAsInt(), part.height()) : part.width());
        int r = rounds.orElse(stitches.isPresent() ? scaled(part.height(), w, part.width()) : part.height());
        if (w > Chart.MOST_STITCHES) {
            return new Refused(new PictureFault.TooWide(w));
        }
        if (r > Chart.MOST_ROUNDS) {
            return new Refused(new PictureFault.TooManyRounds(r));
        }
        Map<Integer, Wanted> known = new HashMap<>();
        return new Read(WantedPicture.of(r, w, place -> {
            int mean = mean(pixels, part, place.place() - 1, w, r - place.round(), r);
            return mean < 0 ? Wanted.NEVER_MIND : known.computeIfAbsent(mean, rgb -> nearest(new Colour(rgb), yarns));
        }));
    }

    private static int scaled(int length, int cells, int of) {
        return (int) Math.min(Integer.MAX_VALUE, Math.max(1, Math.round((double) length * cells / of)));
    }

    /**
     * The mean colour of a cell, in 24 bits; -1 if it is mostly transparent. A pixel counts by its share in the cell, so that
     * cells need not end where pixels end.
     */
    private static int mean(Pixels pixels, Crop part, int column, int columns, int row, int rows) {
        double left = (double) part.width() * column / columns;
        double right = (double) part.width() * (column + 1) / columns;
        double top = (double) part.height() * row / rows;
        double bottom = (double) part.height() * (row + 1) / rows;
        double[] light = new double[3];
        double opaque = 0;
        for (int y = (int) top; y < Math.min(Math.ceil(bottom), part.height()); y++) {
            double tall = Math.min(bottom, y + 1) - Math.max(top, y);
            for (int x = (int) left; x < Math.min(Math.ceil(right), part.width()); x++) {
                int pixel = pixels.argb()[(part.top() + y) * pixels.width() + part.left() + x];
                double share = tall * (Math.min(right, x + 1) - Math.max(left, x)) * (pixel >>> 24) / 255;
                opaque += share;
                light[0] += share * Colour.linear(pixel >> 16 & 0xff);
                light[1] += share * Colour.linear(pixel >> 8 & 0xff);
                light[2] += share * Colour.linear(pixel & 0xff);
            }
        }
        if (opaque <= 0 || opaque < LEAST_OPAQUE * (right - left) * (bottom - top)) {
            return -1;
        }
        return channel(light[0] / opaque) << 16 | channel(light[1] / opaque) << 8 | channel(light[2] / opaque);
    }

    /** The channel, 0 to 255, whose light is nearest. */
    private static int channel(double light) {
        double c = light <= 0.0031308 ? 12.92 * light : 1.055 * Math.pow(light, 1 / 2.4) - 0.055;
        return (int) Math.max(0, Math.min(255, Math.round(255 * c)));
    }

    private Wanted nearest(Colour colour, List<Yarn> yarns) {
        Yarn nearest = yarns.get(0);
        double least = Double.MAX_VALUE;
        for (Yarn yarn : yarns) {
            double difference = Contrast.between(colour, yarn.colour()).difference();
            if (difference < least) {
                least = difference;
                nearest = yarn;
            }
        }
        return threshold.isPresent() && least > threshold.getAsDouble() ? Wanted.NEVER_MIND : Wanted.of(nearest.id());
    }
}
