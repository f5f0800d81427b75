/* A controller made of libmodbus, for the tests of the Modbus driver.
 *
 * controller tcp PORT | controller rtu DEVICE
 *
 * Says "ready" when it listens and "function N" for each request. Unit 9 never answers; holding
 * register 12 is 999 and answers only after 500 ms.
 * Holding registers 0..: 663, -100, then the float 66.3 (0x4284999A, IEEE 754) in the byte orders
 * ABCD, CDAB, BADC, DCBA at 2, 4, 6, 8, and the whole number -123456 in the order ABCD at 10.
 * Input register 0: 215. Nothing above holding 12 and input 0.
 */
#include <errno.h>
#include <modbus/modbus.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

#define QUIET_UNIT 9
#define LATE_REGISTER 12
#define LATE_MICROSEC 500000

static void fill(modbus_mapping_t *map) {
  uint16_t *h = map->tab_registers;
  h[0] = 663;
  h[1] = (uint16_t)-100;
  h[2] = 0x4284; h[3] = 0x999A;
  h[4] = 0x999A; h[5] = 0x4284;
  h[6] = 0x8442; h[7] = 0x9A99;
  h[8] = 0x9A99; h[9] = 0x8442;
  h[10] = (uint16_t)((uint32_t)-123456 >> 16);
  h[11] = (uint16_t)(uint32_t)-123456;
  h[LATE_REGISTER] = 999;
  map->tab_input_registers[0] = 215;
}

static void serve(modbus_t *ctx, modbus_mapping_t *map) {
  uint8_t query[MODBUS_MAX_ADU_LENGTH];
  int header = modbus_get_header_length(ctx);
  for (;;) {
    int count = modbus_receive(ctx, query);
    if (count < 0 && (errno == ECONNRESET || errno == EBADF || errno == EPIPE)) return;
    if (count <= 0) continue;
    printf("function %d\n", query[header]);
    fflush(stdout);
    if (query[header - 1] == QUIET_UNIT) continue;
    int address = (query[header + 1] << 8) + query[header + 2];
    if (query[header] == 3 && address == LATE_REGISTER) usleep(LATE_MICROSEC);
    modbus_reply(ctx, query, count, map);
  }
}

int main(int argc, char **argv) {
  if (argc != 3) return 2;
  int tcp = strcmp(argv[1], "tcp") == 0;
  modbus_t *ctx =
      tcp ? modbus_new_tcp("127.0.0.1", atoi(argv[2])) : modbus_new_rtu(argv[2], 9600, 'N', 8, 1);
  modbus_mapping_t *map = modbus_mapping_new(0, 0, 13, 1);
  if (ctx == NULL || map == NULL) return 3;
  fill(map);
  if (!tcp) {
    modbus_set_slave(ctx, 1);
    if (modbus_connect(ctx) < 0) return 4;
    puts("ready");
    fflush(stdout);
    for (;;) serve(ctx, map);
  }
  int door = modbus_tcp_listen(ctx, 5);
  if (door < 0) return 5;
  puts("ready");
  fflush(stdout);
  for (;;) {
    modbus_tcp_accept(ctx, &door);
    serve(ctx, map);
    modbus_close(ctx);
  }
}
