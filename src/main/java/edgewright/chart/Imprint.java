package edgewright.chart;

import java.net.URI;
import java.net.URISyntaxException;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/**
 * Who publishes patterns, shared by all patterns of a designer. All but the name may be left unsaid; each text is in one line,
 * but for what buyers may do.
 *
 * @param name never blank
 * @param contact how to reach the designer, for instance an address of electronic mail
 * @param web an address of the World Wide Web, see {@link #isWebAddress}, or empty
 * @param copyright the line of copyright, such as {@code © 2026 Saltmarsh Studio}
 * @param use what buyers may do with the pattern and with what they make of it; like the text of an {@link OwnSection}
 * @param logo the name of a picture, relative to the folder of the imprint file
 * @param accent the colour of headings and rules in print
 */
public record Imprint(
        String name,
        String contact,
        String web,
        String copyright,
        String use,
        String logo,
        Optional<Colour> accent,
        Extras extras) {

    public Imprint {
        name = CleanText.oneLine(name);
        contact = CleanText.oneLine(contact);
        copyright = CleanText.oneLine(copyright);
        use = CleanText.lines(use).strip();
        Objects.requireNonNull(logo);
        Objects.requireNonNull(accent);
        Objects.requireNonNull(extras);
        if (name.isEmpty() || use.length() > OwnSection.LONGEST) {
            throw new IllegalArgumentException("an imprint without a name, or with too long a text");
        }
        if (!web.isEmpty() && !isWebAddress(web)) {
            throw new IllegalArgumentException("web: " + web);
        }
    }

    /** A name and nothing else. */
    public static Imprint of(String name) {
        return new Imprint(name, "", "", "", "", "", Optional.empty(), Extras.NONE);
    }

    /** Whether this is an absolute address of the World Wide Web: {@code http} or {@code https}, and a host. */
    public static boolean isWebAddress(String text) {
        try {
            URI address = new URI(text);
            String scheme =
                    address.getScheme() == null ? "" : address.getScheme().toLowerCase(Locale.ROOT);
            return (scheme.equals("https") || scheme.equals("http")) && address.getHost() != null;
        } catch (URISyntaxException e) {
            return false;
        }
    }
}
