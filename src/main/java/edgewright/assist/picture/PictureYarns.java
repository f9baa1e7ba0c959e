package edgewright.assist.picture;

import edgewright.chart.Colour;
import edgewright.chart.Yarn;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** Yarns for a picture that brings none: each with its id for a name, dark and light in turn so that neighbours can be told apart. */
public final class PictureYarns {
    private static final List<Colour> COLOURS = List.of(
            Colour.parse("#2b2a33"),
            Colour.parse("#f2ead8"),
            Colour.parse("#a8392f"),
            Colour.parse("#cfe6df"),
            Colour.parse("#1f4a2c"),
            Colour.parse("#f4b942"),
            Colour.parse("#16343b"),
            Colour.parse("#b9c7cf"));

    private PictureYarns() {}

    /** One yarn for each id, in their order. */
    public static List<Yarn> of(Collection<String> ids) {
        List<Yarn> yarns = new ArrayList<>();
        for (String id : ids) {
            yarns.add(new Yarn(id, id, COLOURS.get(yarns.size() % COLOURS.size())));
        }
        return List.copyOf(yarns);
    }
}
