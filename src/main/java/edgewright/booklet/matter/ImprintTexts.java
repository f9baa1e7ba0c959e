package edgewright.booklet.matter;

import edgewright.chart.Imprint;
import edgewright.texts.Messages;
import edgewright.words.own.OwnText;
import java.net.URI;
import java.net.URISyntaxException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** What an imprint says: who publishes, how to reach them, whose the pattern is and what buyers may do. */
final class ImprintTexts {
    private static final Pattern MAIL = Pattern.compile("[^\\s@<>()]+@[^\\s@<>()]+");

    private final Messages says;

    /** A word and what is to be said of it. */
    record Text(String label, OwnText text) {}

    ImprintTexts(Messages says) {
        this.says = says;
    }

    List<Text> of(Imprint imprint) {
        List<Text> texts = new ArrayList<>();
        texts.add(new Text(says.text("own-publisher"), OwnTextSetter.alone(imprint.name(), Optional.empty())));
        if (!imprint.contact().isEmpty()) {
            texts.add(new Text(
                    says.text("own-contact"), OwnTextSetter.alone(imprint.contact(), mail(imprint.contact()))));
        }
        if (!imprint.web().isEmpty()) {
            Optional<String> address = Optional.of(URI.create(imprint.web()).toASCIIString());
            texts.add(new Text(says.text("own-web"), OwnTextSetter.alone(imprint.web(), address)));
        }
        if (!imprint.copyright().isEmpty()) {
            texts.add(new Text(says.text("own-copyright"), OwnTextSetter.alone(imprint.copyright(), Optional.empty())));
        }
        if (!imprint.use().isEmpty()) {
            texts.add(new Text(says.text("own-use"), OwnText.of(imprint.use())));
        }
        return texts;
    }

    private static Optional<String> mail(String contact) {
        if (!MAIL.matcher(contact).matches()) {
            return Optional.empty();
        }
        try {
            return Optional.of(new URI("mailto", contact, null).toASCIIString());
        } catch (URISyntaxException e) {
            return Optional.empty();
        }
    }
}
