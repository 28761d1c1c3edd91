package lapline.exchange.readings;

import java.io.Serializable;
import java.util.List;

/**
 * A file of readings as rows and columns, every value as text.
 *
 * @param charset the encoding it was found to be in
 * @param header the first row; as many names as there are columns
 * @param rows the others, each as long as the header
 */
public record ReadingsTable(String charset, List<String> header, List<List<String>> rows)
    implements Serializable {}
