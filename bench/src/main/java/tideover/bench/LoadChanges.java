package tideover.bench;

import java.util.SplittableRandom;
import tideover.engine.network.flow.FourWireNetwork;
import tideover.engine.network.flow.PowerLoad;

/**
 * The powers of all loads of a network, each time others: each load draws a share of its own, between half and all.
 */
final class LoadChanges {

    private final FourWireNetwork network;
    private final SplittableRandom random = new SplittableRandom(1);

    /** One set of powers, those of each load [W] and [var]. */
    static final class Powers {
        final double[] powerW;
        final double[] reactiveVar;

        Powers(int count) {
            powerW = new double[count];
            reactiveVar = new double[count];
        }
    }

    LoadChanges(FourWireNetwork network) {
        this.network = network;
    }

    Powers next() {
        Powers powers = new Powers(network.loadCount());
        for (int i = 0; i < network.loadCount(); i++) {
            PowerLoad load = network.load(i);
            double share = random.nextDouble(0.5, 1);
            powers.powerW[i] = share * load.powerW();
            powers.reactiveVar[i] = share * load.reactiveVar();
        }
        return powers;
    }

    Powers[] next(int count) {
        Powers[] sets = new Powers[count];
        for (int i = 0; i < count; i++) sets[i] = next();
        return sets;
    }
}
