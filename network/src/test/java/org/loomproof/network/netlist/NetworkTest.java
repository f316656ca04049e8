package org.loomproof.network.netlist;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.loomproof.network.TestNetwork.at;
import static org.loomproof.network.TestNetwork.id;
import static org.loomproof.network.TestNetwork.network;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.Relay;
import org.loomproof.network.part.Resistor;

class NetworkTest {
    private static final Network NETWORK = network()
            .battery("b", "plus", "0", 12, 0.01)
            .contact("key", "plus", "out")
            .relay("k", "out", "0", "plus", "made", "rest")
            .lamp("l", "made", "0", 12, 5)
            .build();

    @Test
    void allMistakesAreToldAtOnce() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> network()
                        .resistor("r", "a", "b", 1)
                        .resistor("r", "c", "d", 2)
                        .build())
                .withMessageContaining("two parts are named r")
                .withMessageContaining("no part is joined to chassis");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void noPartTakesAnImpossibleResistance(double ohms) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Resistor(id("r"), at("a"), at("0"), ohms))
                .withMessageContaining("r: ohms");
        assertThatIllegalArgumentException().isThrownBy(() -> NETWORK.atRest().ohms(id("k"), ohms));
    }

    @Test
    void aRelayPulledInByLessThanItDropsOutByIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Relay(id("k"), at("a"), at("0"), 85, 1, 2, List.of(), 1e-3))
                .withMessageContaining("pull-in must exceed drop-out");
    }

    @Test
    void nodesAndPartsKeepTheirOrderChassisFirst() {
        assertThat(NETWORK.nodes().getFirst()).isEqualTo(Node.CHASSIS);
        assertThat(NETWORK.nodes()).containsExactly(at("0"), at("plus"), at("out"), at("made"), at("rest"));
        assertThat(NETWORK.findPart(id("nobody"))).isEmpty();
        assertThatIllegalArgumentException().isThrownBy(() -> NETWORK.part(id("nobody")));
    }

    @Test
    void aSettingLeavesTheOneItCameFromAlone() {
        Setting rest = NETWORK.atRest();
        Setting closed = rest.closed(id("key"));
        assertThat(rest.isOn(id("key"))).isFalse();
        assertThat(closed.isOn(id("key"))).isTrue();
        assertThat(closed.open(id("key"))).isEqualTo(rest).hasSameHashCodeAs(rest);
        assertThat(closed).isNotEqualTo(rest);
    }

    @Test
    void aSettingRefusesAPartOfTheWrongKind() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> NETWORK.atRest().closed(id("l")))
                .withMessageContaining("l is no switch");
        assertThatIllegalArgumentException().isThrownBy(() -> NETWORK.atRest().shorted(id("b")));
        assertThatIllegalArgumentException().isThrownBy(() -> NETWORK.atRest().shorted(id("k")));
        assertThatIllegalArgumentException().isThrownBy(() -> NETWORK.atRest().emf(id("b"), Double.NaN));
    }

    @Test
    void faultsAreRememberedAndTakenBack() {
        Setting broken = NETWORK.atRest().broken(id("l"));
        assertThat(broken.fault(id("l"))).isEqualTo(PartFault.BROKEN);
        assertThat(broken.shorted(id("l")).fault(id("l"))).isEqualTo(PartFault.SHORTED);
        assertThat(broken.whole(id("l"))).isEqualTo(NETWORK.atRest());
    }
}
