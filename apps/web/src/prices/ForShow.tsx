/** Said beside every price that rests on a rate without a source. */
export const ForShow = ({ forShow }: { forShow: boolean }) =>
  forShow ? <span className="price-for-show">for show, rates without a source</span> : null;
