package tideover.web;

import java.util.Map;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;

/** Tells whoever watches the process that it answers; nothing of what is in it. */
@RestController
final class Health {
    @GetMapping("/health")
    Map<String, String> health() {
        return Map.of("status", "up");
    }
}
