package edgewright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.texts.English;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Every command that has a name has a place in the menus, and one only. */
class MenuPlanTest {
    @Test
    void everyCommandWithANameStandsInTheMenusOnce() {
        List<String> planned = MenuPlan.BAR.stream().flatMap(MenuPlan::commands).toList();
        Set<String> named = English.LANGUAGE.messages("desk/parts").keys().stream()
                .filter(key -> key.startsWith("action-"))
                .map(key -> key.substring("action-".length()))
                .collect(Collectors.toSet());

        assertThat(planned).doesNotHaveDuplicates();
        assertThat(planned.stream().map(id -> id.replace('.', '-')).toList())
                .containsExactlyInAnyOrderElementsOf(named);
    }

    @Test
    void theWayToACommandLeadsThroughTheMenusInTheMenus() {
        assertThat(MenuPlan.pathTo("save")).contains(List.of("file"));
        assertThat(MenuPlan.pathTo("mark.up")).contains(List.of("edit", "cursor"));
        assertThat(MenuPlan.pathTo("fly")).isEmpty();
    }
}
