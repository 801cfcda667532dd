package tideover.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import tideover.engine.site.Site;

class GrownHouseTest {

    @Test
    void aHouseGrowsToAsManyPlacesAsWantedAndKeepsItsOwn() throws IOException {
        Site house = SiteFile.read(Path.of("../examples/town-house.yaml"));
        Site grown = GrownHouse.of(house, 60);
        assertThat(GrownHouse.places(house)).isLessThan(60);
        assertThat(GrownHouse.places(grown)).isEqualTo(60);
        assertThat(grown.planned()).containsAllEntriesOf(house.planned());
    }

    @Test
    void aLargerHouseStaysAsItIs() throws IOException {
        Site house = SiteFile.read(Path.of("../examples/town-house.yaml"));
        assertThat(GrownHouse.of(house, 10)).isEqualTo(house);
    }
}
