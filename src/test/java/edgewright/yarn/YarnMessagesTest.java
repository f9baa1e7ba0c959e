package edgewright.yarn;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class YarnMessagesTest {
    @Test
    void noMessageNamesAStitchWhoseNameDependsOnTheTerms() throws IOException {
        assertThat(Files.readString(Path.of("src/main/resources/edgewright/language/en/yarn.ftl")))
                .contains("chains")
                .doesNotContainPattern("(?i)\\b(dc|sc|hdc|htr|tr|dtr|blo|flo|ch)\\b");
    }
}
