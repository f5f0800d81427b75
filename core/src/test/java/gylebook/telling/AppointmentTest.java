package gylebook.telling;

import static org.assertj.core.api.Assertions.assertThat;

import gylebook.testing.Cases;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AppointmentTest {
  private static String said(String typed) {
    return ((Filled.Done<Appointment>) Appointment.read(typed)).thing().words();
  }

  private static String unclear(String typed) {
    Filled<Appointment> read = Appointment.read(typed);
    assertThat(read).as(typed).isInstanceOf(Filled.Unclear.class);
    Filled.Unclear<Appointment> unclear = (Filled.Unclear<Appointment>) read;
    assertThat(unclear.value()).isEqualTo(typed);
    assertThat(unclear.maybe()).isNotBlank();
    return unclear.what();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          18:00                      | 18:00
          ' 6.30 '                   | 06:30
          18h                        | 18:00
          18h15                      | 18:15
          7                          | 07:00
          6 pm                       | 18:00
          6:30 p.m.                  | 18:30
          12 am                      | 00:00
          12 pm                      | 12:00
          noon                       | 12:00
          at 18:00                   | 18:00
          Saturday                   | Saturday
          sat 18:00                  | Saturday 18:00
          by Saturday at 6 pm        | Saturday 18:00
          on Thurs, 7                | Thursday 07:00
          Sun noon                   | Sunday 12:00
          2026-12-05                 | 2026-12-05
          2026-12-05 18:00           | 2026-12-05 18:00
          2026-12-05T18:00           | 2026-12-05 18:00
          Sat 2026-12-05 18:00       | 2026-12-05 18:00
          5 Dec 2026                 | 2026-12-05
          Saturday 5 December 2026, 18:00 | 2026-12-05 18:00
          December 5th, 2026         | 2026-12-05
          """)
  void aDayAndAnHourAreReadAsPeopleWriteThem(String typed, String words) {
    assertThat(said(typed)).isEqualTo(words);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          teatime            | 'teatime' is no day or hour that can be read.
          25:00              | There is no hour '25:00'.
          12:60              | There is no hour '12:60'.
          13 pm              | There is no hour '13 pm'.
          1:2:3              | '1:2:3' is no day or hour that can be read.
          -3                 | '-3' is no day or hour that can be read.
          2026-02-30         | There is no day 2026-02-30.
          Sunday 2026-12-05  | 2026-12-05 is a Saturday.
          05/12/2026         | '05/12/2026' can be two days.
          5.12.2026          | '5.12.2026' can be two days.
          5 Dec              | '5 dec' has no year.
          tomorrow 18:00     | 'tomorrow 18:00' is another day whenever it is read.
          next Saturday      | 'next Saturday' is another day whenever it is read.
          """)
  void whatIsUnclearIsAskedBack(String typed, String what) {
    assertThat(unclear(typed)).isEqualTo(what);
  }

  @Test
  void nothingIsNoDay() {
    for (String typed : List.of("", "   ", "x".repeat(500))) {
      assertThat(unclear(typed)).isEqualTo("This is no day or hour.");
    }
  }

  @Test
  void anyAppointmentIsReadBackFromItsWords() {
    Cases.each(
        300,
        luck -> {
          boolean dated = luck.nextBoolean();
          Optional<LocalDate> date =
              dated
                  ? Optional.of(LocalDate.of(2020, 1, 1).plusDays(luck.nextInt(20_000)))
                  : Optional.empty();
          Optional<DayOfWeek> day =
              !dated && luck.nextBoolean()
                  ? Optional.of(DayOfWeek.of(1 + luck.nextInt(7)))
                  : Optional.empty();
          boolean bare = date.isEmpty() && day.isEmpty();
          Optional<LocalTime> hour =
              bare || luck.nextBoolean()
                  ? Optional.of(LocalTime.of(luck.nextInt(24), luck.nextInt(60)))
                  : Optional.empty();
          Appointment made = new Appointment(date, day, hour);
          assertThat(Appointment.read(made.words())).isEqualTo(new Filled.Done<>(made));
        });
  }
}
