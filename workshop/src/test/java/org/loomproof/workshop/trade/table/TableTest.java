package org.loomproof.workshop.trade.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class TableTest {
    @Test
    void theLastColumnTakesTheRestOfTheLine() {
        Table table = Table.parse("t", List.of("# source: here", "name,status,note", "one,read,with, commas"));
        assertThat(table.source()).isEqualTo("here");
        assertThat(table.findRow("name", "one").orElseThrow().text("note")).isEqualTo("with, commas");
        assertThat(table.listRows().getFirst().status()).isEqualTo(Status.READ);
    }

    @Test
    void aTableWithoutItsSourceIsTurnedDown() {
        assertThatThrownBy(() -> Table.parse("t", List.of("name,status", "one,read")))
                .hasMessageContaining("source");
    }

    @Test
    void aShortLineIsTurnedDownWithItsPlace() {
        assertThatThrownBy(() -> Table.parse("t", List.of("# source: here", "name,status,note", "one,read")))
                .hasMessageContaining("t:3");
    }

    @Test
    void aStatusThatIsNoneIsTurnedDown() {
        Table table = Table.parse("t", List.of("# source: here", "name,status", "one,heard"));
        assertThatThrownBy(() -> table.listRows().getFirst().status()).hasMessageContaining("heard");
    }
}
