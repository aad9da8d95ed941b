/** How everything that is shipped is minified. */
export const terserOptions = {
  module: true,
  ecma: 2022,
  compress: { passes: 2, inline: 1, keep_fargs: false, unsafe_arrows: true, unsafe_methods: true },
};
