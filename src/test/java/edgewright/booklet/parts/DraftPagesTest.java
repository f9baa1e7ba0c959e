package edgewright.booklet.parts;

import static edgewright.texts.Arg.count;
import static org.assertj.core.api.Assertions.assertThat;

import edgewright.texts.English;
import edgewright.texts.Messages;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What a draft says of the findings that it does not list. */
class DraftPagesTest {
    @Test
    void oneFindingThatIsNotListedIsOne() {
        Messages says = English.LANGUAGE.messages("booklet");
        assertThat(IntStream.of(1, 2).mapToObj(more -> says.text("draft-more", count("findings", more))))
                .containsExactly("There is 1 more finding.", "There are 2 more findings.");
    }
}
