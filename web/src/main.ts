// The front end's entry. Pages read and post without it.
import "htmx.org";
