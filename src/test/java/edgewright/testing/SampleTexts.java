package edgewright.testing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;

/** Texts to be measured: every line of the program's own texts and of the sample charts, and strings by chance. */
public final class SampleTexts {
    /** Blocks of Unicode, both ends included: Latin, accents, Greek, Cyrillic, marks, and some that no face has. */
    private static final int[][] BLOCKS = {
        {0x20, 0x7e},
        {0xa0, 0x24f},
        {0x250, 0x36f},
        {0x370, 0x3ff},
        {0x400, 0x52f},
        {0x1e00, 0x1fff},
        {0x2010, 0x205e},
        {0x2070, 0x20c0},
        {0x2100, 0x214f},
        {0x5d0, 0x5ea},
        {0x4e00, 0x4eff},
        {0x1f400, 0x1f4ff}
    };

    private SampleTexts() {}

    /** All of them; the same each time. */
    public static List<String> all() throws IOException {
        List<String> texts = new ArrayList<>();
        for (String folder : new String[] {"src/main/resources/edgewright", "sample-charts"}) {
            try (Stream<Path> files = Files.walk(Path.of(folder))) {
                for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
                    if (!file.toString().endsWith(".png")) {
                        texts.addAll(Files.readAllLines(file));
                    }
                }
            }
        }
        Random random = new Random(17);
        for (int i = 0; i < 2000; i++) {
            texts.add(random(random, 1 + random.nextInt(40)));
        }
        return texts;
    }

    /** A text of so many characters, each from one of the blocks, by chance. */
    public static String random(Random random, int length) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < length; i++) {
            int[] block = BLOCKS[random.nextInt(BLOCKS.length)];
            text.appendCodePoint(block[0] + random.nextInt(block[1] - block[0] + 1));
        }
        return text.toString();
    }
}
