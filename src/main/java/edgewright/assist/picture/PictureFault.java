package edgewright.assist.picture;

import java.util.List;

/** Why something cannot be read as a picture of one repeat. Lines and columns count from 1. */
public sealed interface PictureFault {

    /** What there is to say of each; a new fault does not compile before it is answered here. */
    interface Cases<T> {
        T of(NoCells fault);

        T of(TooManyRounds fault);

        T of(TooWide fault);

        T of(Uneven fault);

        T of(NoSuchYarn fault);

        T of(CropOutside fault);

        T of(TooManyPixels fault);
    }

    /** Hands this fault to the case that answers it. */
    <T> T among(Cases<T> cases);

    /** There is not one cell. */
    record NoCells() implements PictureFault {
        @Override
        public <T> T among(Cases<T> cases) {
            return cases.of(this);
        }
    }

    /** More rounds than a chart may have. */
    record TooManyRounds(int rounds) implements PictureFault {
        @Override
        public <T> T among(Cases<T> cases) {
            return cases.of(this);
        }
    }

    /** More stitches in a round than a repeat may have. */
    record TooWide(int stitches) implements PictureFault {
        @Override
        public <T> T among(Cases<T> cases) {
            return cases.of(this);
        }
    }

    /** A line that is not as long as the first. */
    record Uneven(int line, int length, int expected) implements PictureFault {
        @Override
        public <T> T among(Cases<T> cases) {
            return cases.of(this);
        }
    }

    /** A letter that is no yarn of one letter, and those that there are. */
    record NoSuchYarn(int line, int column, String letter, List<String> yarns) implements PictureFault {
        public NoSuchYarn {
            yarns = List.copyOf(yarns);
        }

        @Override
        public <T> T among(Cases<T> cases) {
            return cases.of(this);
        }
    }

    /** A part that is cut out and does not lie in the picture, which has so many pixels across and down. */
    record CropOutside(int width, int height) implements PictureFault {
        @Override
        public <T> T among(Cases<T> cases) {
            return cases.of(this);
        }
    }

    /** More pixels than are looked at. */
    record TooManyPixels(long pixels, int most) implements PictureFault {
        @Override
        public <T> T among(Cases<T> cases) {
            return cases.of(this);
        }
    }
}
