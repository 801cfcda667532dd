package tideover.files;

import java.util.Optional;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingKind;
import tideover.files.yaml.Node;
import tideover.files.yaml.Node.Mapping;
import tideover.files.yaml.Spot;

/** A thing as stated at one place of the file. */
record Stated(ThingKind kind, Thing thing, Mapping node) {
    /** Where a field of it stands; where the thing begins if it does not state the field. */
    Spot spot(String field) {
        Optional<Node> value = node.find(field);
        return value.map(Node::spot).orElse(node.spot());
    }
}
