package tideover.web.api;

import org.springframework.core.io.ClassPathResource;
import org.springframework.core.io.Resource;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;

/** What programs can read about the addresses they may ask. */
@RestController
final class Description {
    @GetMapping("/api/openapi.yaml")
    ResponseEntity<Resource> openApi() {
        return ResponseEntity.ok()
                .contentType(MediaType.parseMediaType("application/yaml"))
                .body(new ClassPathResource("tideover/web/api/openapi.yaml"));
    }
}
