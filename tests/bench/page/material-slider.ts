// The slider of a general-purpose element library, built on a native range input: what ours is compared with.
import '@material/web/slider/slider.js';
