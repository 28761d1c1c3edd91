package lapline.exchange;

import jakarta.annotation.Priority;
import jakarta.ws.rs.Priorities;
import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.container.ContainerRequestFilter;
import jakarta.ws.rs.ext.Provider;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;

/** Turns away bodies longer than any panel's record, by what they say and by what they are. */
@Provider
@Priority(Priorities.HEADER_DECORATOR)
public class BodyLimit implements ContainerRequestFilter {
  static final long MOST_BYTES = 1_048_576;

  @Override
  public void filter(ContainerRequestContext request) {
    if (request.getLength() > MOST_BYTES) {
      throw tooLong();
    }
    request.setEntityStream(new Counted(request.getEntityStream()));
  }

  private static RefusedException tooLong() {
    return new RefusedException(413, "exchange.too-long", 1);
  }

  /** A stream that refuses to go on past the limit; a length may be wrong or not said. */
  private static final class Counted extends FilterInputStream {
    private long read;

    Counted(InputStream in) {
      super(in);
    }

    @Override
    public int read() throws IOException {
      int b = super.read();
      count(b < 0 ? 0 : 1);
      return b;
    }

    @Override
    public int read(byte[] into, int from, int most) throws IOException {
      int n = super.read(into, from, most);
      count(Math.max(0, n));
      return n;
    }

    private void count(int more) {
      read += more;
      if (read > MOST_BYTES) {
        throw tooLong();
      }
    }
  }
}
