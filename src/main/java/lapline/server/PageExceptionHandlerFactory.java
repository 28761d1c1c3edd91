package lapline.server;

import jakarta.faces.context.ExceptionHandler;
import jakarta.faces.context.ExceptionHandlerFactory;

/** Puts {@link PageExceptionHandler} in front of the one that comes with Faces. */
public class PageExceptionHandlerFactory extends ExceptionHandlerFactory {
  public PageExceptionHandlerFactory(ExceptionHandlerFactory wrapped) {
    super(wrapped);
  }

  @Override
  public ExceptionHandler getExceptionHandler() {
    return new PageExceptionHandler(getWrapped().getExceptionHandler());
  }
}
