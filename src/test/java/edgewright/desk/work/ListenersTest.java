package edgewright.desk.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Who is told, in which order, and no longer. */
class ListenersTest {
    private final Listeners<String> listeners = new Listeners<>();
    private final List<String> heard = new ArrayList<>();

    @Test
    void whatAListenerBringsAboutIsToldWhenAllKnowOfWhatCameBefore() {
        listeners.add(news -> {
            heard.add("first hears of " + news);
            if (news.equals("a stitch")) {
                listeners.tell("the cursor");
            }
        });
        listeners.add(news -> heard.add("second hears of " + news));
        listeners.tell("a stitch");

        assertThat(heard)
                .containsExactly(
                        "first hears of a stitch",
                        "second hears of a stitch",
                        "first hears of the cursor",
                        "second hears of the cursor");
    }

    @Test
    void whoHasEndedIsNotToldEvenOfWhatIsBeingTold() {
        List<Listening> second = new ArrayList<>();
        listeners.add(news -> second.forEach(Listening::end));
        second.add(listeners.add(news -> heard.add("second hears of " + news)));
        listeners.tell("a stitch");
        second.forEach(Listening::end);
        listeners.tell("the cursor");

        assertThat(heard).isEmpty();
    }

    @Test
    void aListenerThatWasAddedTwiceHearsOnceWhenOneOfThemHasEnded() {
        Listening one = listeners.add(heard::add);
        listeners.add(heard::add);
        listeners.tell("before");
        one.end();
        listeners.tell("after");

        assertThat(heard).containsExactly("before", "before", "after");
    }

    @Test
    void afterAListenerHasFailedTheNextNewsIsToldAsEver() {
        Listening failing = listeners.add(news -> {
            listeners.tell("what it brought about");
            throw new IllegalStateException("no such pane");
        });
        listeners.add(heard::add);
        assertThatThrownBy(() -> listeners.tell("a stitch")).hasMessage("no such pane");
        failing.end();
        listeners.tell("the cursor");

        assertThat(heard).containsExactly("the cursor");
    }
}
