/** How everything that is shipped is minified. */
export const terserOptions = {
  module: true,
  ecma: 2022,
  compress: { passes: 2, unsafe_arrows: true, unsafe_methods: true },
};
