package plycrag.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class DigestTest {

  /** NIST, examples for FIPS 180-4: the one-block message "abc". */
  @Test
  void publishedExample() {
    assertThat(Digest.sha256("abc".getBytes(StandardCharsets.US_ASCII)))
        .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
  }
}
