package tideover.bench;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.util.List;
import tideover.engine.network.flow.Flow;
import tideover.engine.network.flow.FourWireNetwork;
import tideover.engine.network.flow.Phasor;
import tideover.engine.rules.Digest;

/**
 * What came out, for its digest. Numbers count to a millionth of their unit, far coarser than the solver: what changes the
 * digest is another result, not another rounding.
 */
final class Results {

    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();

    void add(double value) {
        bytes.writeBytes(ByteBuffer.allocate(8).putLong(Math.round(value * 1e6)).array());
    }

    void add(String text) {
        bytes.writeBytes(text.getBytes(java.nio.charset.StandardCharsets.UTF_8));
    }

    /** Voltages of all points. */
    void add(FourWireNetwork network, List<Flow> flows) {
        for (Flow flow : flows)
            for (int point = 0; point < network.pointCount(); point++) {
                Phasor voltageV = flow.voltageV(point);
                add(voltageV.real());
                add(voltageV.imaginary());
            }
    }

    String digest() {
        return Digest.of(bytes.toByteArray()).shortened();
    }
}
