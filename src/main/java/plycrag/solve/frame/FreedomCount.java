package plycrag.solve.frame;

import java.util.ArrayList;
import java.util.List;

/**
 * Numbers the freedoms of a frame: six for each node first, in the order of nodes, then those of
 * hinges and of places inside beams. What is numbered at once is a block and stays together.
 */
final class FreedomCount {
  static final int OF_NODE = 6;

  private final List<Integer> blocks = new ArrayList<>();
  private int blockCount;

  FreedomCount(int nodes) {
    for (int node = 0; node < nodes; node++) {
      block(OF_NODE);
    }
  }

  static int of(int node, Freedom freedom) {
    return OF_NODE * node + freedom.number();
  }

  /** Numbers so many more; the first of them. */
  int block(int size) {
    int first = blocks.size();
    for (int i = 0; i < size; i++) {
      blocks.add(blockCount);
    }
    blockCount++;
    return first;
  }

  int freedoms() {
    return blocks.size();
  }

  int blocks() {
    return blockCount;
  }

  /** The block of each freedom. */
  int[] blockOf() {
    return blocks.stream().mapToInt(Integer::intValue).toArray();
  }
}
