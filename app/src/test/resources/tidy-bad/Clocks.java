package gylebook.brewday;

import java.time.Instant;
import java.util.Random;
import java.util.UUID;
import java.util.function.Supplier;

final class Clocks {
  Instant at = Instant.now(); // FAULT ban
  long started = System.nanoTime(); // FAULT ban
  Supplier<Instant> later = Instant::now; // FAULT ban
  Random dice = new Random(); // FAULT ban
  String id = UUID.randomUUID().toString(); // FAULT ban

  void say() {
    System.out.println(at); // FAULT ban
  }

  void pause() throws InterruptedException {
    Thread.sleep(10); // FAULT ban
  }
}
